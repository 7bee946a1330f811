# The relays are there, their conductors are not: one cable of the way has two. And
# a cable of its own with one conductor too few.
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
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  branch "Wing" {
    leg   = "5 m"
    cable = "2 x 1.5 mm2" # expect fail error: The override of attenuator "Office" needs 4 conductors, and the cable to it, 2 x 1.5 mm2, has 2. && at least 4 conductors && two for the line, and two for a relay && remedy (computed) Use cable with 4 conductors, 4 x 1.5 mm2. && Lay a cable of its own for the override, 2 x 1.5 mm2, along the same way.
    attenuator "Office" { # expect pass: is lifted for announcements by its 24 V relay.
      leg      = "5 m"
      lowest   = "off"
      override = "24 V relay"
      current  = "20 mA"
      loudspeaker "O" {
        tap = "6 W"
        leg = "2 m"
      }
    }
  }
}
line "Bar" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "2 x 1.5 mm2"
  home_run       = "20 m"
  override_from  = "Rack"
  override_cable = "1 x 0.5 mm2" # expect fail error: The override of attenuator "Counter" needs 3 conductors beside the line, and the cable for it, 1 x 0.5 mm2, has 1. && what attenuator "Counter" needs (cores)
  attenuator "Counter" { # expect pass: lifted
    override = "24 V relay"
    current  = "20 mA"
    cores    = 5
    loudspeaker "B" {
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
