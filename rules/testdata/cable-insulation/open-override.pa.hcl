# The line's own cable says it; that of its third conductor does not. What relays are fed with no cable minds.
system "Shop" { duty = "announcements" } # expect open: missing insulation voltage of the cable of cable "2 x 0.75 mm2": a cable_model with insulation = "300 V"
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
}
cable_model "own/2 x 1.5 mm2" {
  size       = "1.5 mm2"
  cores      = 2
  insulation = "300 V"
}
line "Shop" {
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "own/2 x 1.5 mm2" # expect pass
  override_from  = "Rack"
  override_cable = "2 x 0.75 mm2"
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
  override_cable = "2 x 0.5 mm2"
  attenuator "Counter" {
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "B" { tap = "3 W" }
  }
}
