# The current of a relay, the length of a leg, and who feeds the third.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 5 A" # expect open: Whether amplifier "Rack" has the current for its 2 override relays cannot be told. && missing current of the override relay of attenuator "Room"
}
amplifier "Other" {
  rated_power = "120 W"
}
line "Floor" { # expect open: missing current of the override relay of attenuator "Room"
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Room" {
    override = "24 V relay"
    loudspeaker "LRoom" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
line "Hall" { # expect open: missing length of the home run of line "Hall"
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  override_from = "Rack"
  attenuator "Hall control" {
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LHall control" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
amplifier "Third" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
}
line "Yard" { # expect open: missing volts and current for the override relays of amplifier "Other": relays = "24 V, 1 A"
  amplifier     = "Other"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Other"
  attenuator "Yard control" {
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LYard control" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
