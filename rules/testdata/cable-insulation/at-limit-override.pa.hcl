# The override at exactly what its insulation is rated for: 100 V on a third conductor, 24 V for relays.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
}
cable_model "own/100" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "100 V"
}
cable_model "own/24" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "24 V"
}
line "Shop" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "own/100" # expect pass
  override_from  = "Rack"
  override_cable = "own/100" # expect pass: Line "Shop" carries 100 V, and the insulation of override cable "own/100" is rated 100 V.
  attenuator "Till" {
    override = "third conductor"
    loudspeaker "S" { tap = "3 W" }
  }
}
line "Bar" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "own/100" # expect pass
  override_from  = "Rack"
  override_cable = "own/24" # expect pass: The relays of line "Bar" are fed with 24 V, and the insulation of override cable "own/24" is rated 24 V.
  attenuator "Counter" {
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "B" { tap = "3 W" }
  }
}
