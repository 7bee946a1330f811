# Cable that lasts for the line, and plain cable for its override: with the third conductor gone the attenuators stay turned
# down. Relays that are released for an announcement lift them when their cable is cut.
system "Mill" { duty = "emergency" }
amplifier "Rack" {
  rated_power = "240 W"
  relays      = "24 V, 1 A"
}
cable_model "own/plain" {
  size  = "0.75 mm2"
  cores = 2
}
line "A" { # expect pass: The cable of emergency line "A" works in a fire for 30 min or longer.
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "typical/2 x 1.5 mm2 fire 30"
  home_run       = "20 m"
  override_from  = "Rack"
  override_cable = "own/plain" # expect fail warning: The data of override cable "own/plain" on emergency line "A" state no fire resistance; 30 min are wanted. && remedy (computed) Lay "typical/2 x 1.5 mm2 fire 30" of the catalogue
  attenuator "A knob" {
    override = "third conductor"
    loudspeaker "A" { tap = "6 W" }
  }
}
line "B" { # expect pass: The cable of emergency line "B"
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "typical/2 x 1.5 mm2 fire 30"
  home_run       = "20 m"
  override_from  = "Rack"
  override_cable = "own/plain" # expect pass: The override cable of emergency line "B" need not last: where it is cut, its relays release and lift their attenuators.
  attenuator "B knob" {
    override = "24 V relay"
    relay    = "released to override"
    current  = "20 mA"
    loudspeaker "B" { tap = "6 W" }
  }
}
line "C" { # expect pass: The cable of emergency line "C" # expect open: Whether the override cable of emergency line "C" goes on working && missing fire resistance of the cable of cable "2 x 0.75 mm2"
  amplifier      = "Rack"
  output         = "100 V"
  cable          = "typical/2 x 1.5 mm2 fire 30"
  home_run       = "20 m"
  override_from  = "Rack"
  override_cable = "2 x 0.75 mm2"
  attenuator "C knob" {
    override = "third conductor"
    loudspeaker "C" { tap = "6 W" }
  }
}
