# With emergency duty a cut conductor must not leave the message turned down.
system "Depot" { duty = "emergency" }
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
    quantity = 3
    spacing  = "3 m"
    override = "24 V relay"
    current  = "25 mA"
    relay    = "energised to override" # expect fail warning: The override relays of "Room" on line "Floor" are energised to override: when their supply fails or a conductor is cut, an emergency announcement stays turned down. && released to override && remedy (computed) Hold the relays in and release them to override; the supply then gives 75 mA all the time
    loudspeaker "LRoom" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
line "Hall" { # expect open: missing what the override relay does for an announcement of attenuator "Hall control": relay = "released to override"
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass
  home_run      = "20 m"
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
