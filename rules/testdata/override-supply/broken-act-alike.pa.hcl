# One pair lifts all relays of a line: those that pull in and those that let go
# cannot share it.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 5 A" # expect pass
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Room" {
    override = "24 V relay"
    current  = "25 mA"
    relay    = "energised to override"
    loudspeaker "LRoom" {
      tap = "1 W"
      leg = "2 m"
    }
  }
  attenuator "Hall" {
    leg      = "3 m"
    override = "24 V relay"
    current  = "25 mA"
    relay    = "released to override" # expect fail error: On line "Floor" the relays of "Room" are energised to override and those of "Hall" are released: one switched pair cannot lift both.
    loudspeaker "LHall" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
