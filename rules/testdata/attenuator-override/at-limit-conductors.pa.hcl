# Three conductors are enough for a relay that shares one with the line, when the
# data sheet says so.
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
line "Rooms" { # expect pass: has the 3 conductors
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "3 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Office" { # expect pass
    lowest   = "off"
    override = "24 V relay"
    current  = "20 mA"
    cores    = 3
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
