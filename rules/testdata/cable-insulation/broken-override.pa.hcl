# Bell wire for the override: on the line with a third conductor it carries the line's volts, on the other 24 V for relays,
# of which it is rated less than half.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
}
cable_model "own/bell wire" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "60 V"
}
cable_model "own/ribbon" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "10 V"
}
cable_model "own/2 x 1.5 mm2" {
  size       = "1.5 mm2"
  cores      = 2
  insulation = "300 V"
}
line "Shop" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "own/2 x 1.5 mm2" # expect pass: the insulation of cable "own/2 x 1.5 mm2" is rated 300 V
  override_from  = "Rack"
  override_cable = "own/bell wire" # expect fail error: Line "Shop" carries 100 V, and the insulation of override cable "own/bell wire" is rated 60 V. && remedy (computed) Lay "own/2 x 1.5 mm2" of the catalogue
  attenuator "Till" {
    override = "third conductor"
    loudspeaker "S" { tap = "3 W" }
  }
}
line "Bar" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "own/2 x 1.5 mm2" # expect pass
  override_from  = "Rack"
  override_cable = "own/ribbon" # expect fail error: The relays of line "Bar" are fed with 24 V, and the insulation of override cable "own/ribbon" is rated 10 V. && remedy (computed) Lay cable whose insulation is rated 24 V or more for the override
  attenuator "Counter" {
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "B" { tap = "3 W" }
  }
}
