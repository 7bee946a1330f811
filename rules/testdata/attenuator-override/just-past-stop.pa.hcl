# Half a decibel more.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
  input "Mic" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux"]
  }
  input "Aux" {
    takes    = "line"
    triggers = []
  }
}
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  attenuator "Office" {
    lowest   = "-6.5 dB" # expect fail warning: can turn Desk down by 6.5 dB && at most 6 dB down
    override = "none"
    loudspeaker "O" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic"
  priority = 1
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  priority = 2
}
