# They stop before off: what is left of an announcement, and less behind two.
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
  attenuator "Floor" {
    lowest   = "-12 dB" # expect fail warning: Attenuator "Floor" can turn Desk down by 12 dB, and nothing lifts it. && left of the 12 W behind it 0.7571 W (12 W × 10^(−12/10) = 0.7571 W)
    override = "none"
    loudspeaker "F" {
      tap = "6 W"
      leg = "2 m"
    }
    attenuator "Office" {
      leg      = "3 m"
      lowest   = "-20 dB" # expect fail warning: Attenuator "Office" can turn Desk down by 32 dB && 12 dB + 20 dB = 32 dB
      override = "none"
      loudspeaker "O" {
        tap = "6 W"
        leg = "2 m"
      }
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
