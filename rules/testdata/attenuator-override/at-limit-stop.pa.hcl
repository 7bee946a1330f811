# 6 dB down may be lost: exactly that passes, behind two attenuators together.
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
  attenuator "Floor" { # expect pass: turns announcements down by 2 dB at most.
    lowest   = "-2 dB"
    override = "none"
    attenuator "Office" { # expect pass: turns announcements down by 6 dB at most. && 2 dB + 4 dB = 6 dB
      leg      = "2 m"
      lowest   = "-4 dB"
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
