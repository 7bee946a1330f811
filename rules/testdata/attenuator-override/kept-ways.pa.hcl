# Four ways that let announcements through: a relay on two conductors of the cable,
# a relay on a cable of its own, a third conductor, a stop at 6 dB. The store hears
# music only.
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
line "Rooms" { # expect pass: The cable of line "Rooms" has the 4 conductors that the override of its attenuators needs, and Rack switches it.
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Room" { # expect pass: Each of the 3 attenuators "Room" is lifted for announcements by its 24 V relay.
    quantity = 3
    spacing  = "4 m"
    lowest   = "off"
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "O" {
      tap = "3 W"
      leg = "2 m"
    }
  }
  attenuator "Passage" { # expect pass: Attenuator "Passage" turns announcements down by 6 dB at most.
    leg    = "4 m"
    lowest = "-6 dB"
    loudspeaker "P" {
      tap = "3 W"
      leg = "2 m"
    }
  }
}
line "Bar" { # expect pass: A cable of its own, 2 x 0.75 mm2, carries the override on line "Bar", and Rack switches it.
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "2 x 1.5 mm2"
  home_run       = "20 m"
  override_from  = "Rack"
  override_cable = "2 x 0.75 mm2"
  attenuator "Counter" { # expect pass: lifted
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "B" {
      tap = "3 W"
      leg = "2 m"
    }
  }
}
line "Shop" { # expect pass: has the 3 conductors
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "3 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Till" { # expect pass: lifted for announcements by its third conductor.
    lowest   = "off"
    override = "third conductor"
    loudspeaker "S" {
      tap = "3 W"
      leg = "2 m"
    }
  }
}
line "Store" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  attenuator "Store level" {
    lowest   = "off"
    override = "none"
    loudspeaker "T" {
      tap = "3 W"
      leg = "2 m"
    }
  }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic"
  priority = 1
  lines    = ["Rooms", "Bar", "Shop"]
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  priority = 2
}
