# 30 min where 30 min are wanted.
system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/fire" {
  size           = "1.5 mm2"
  cores          = 2
  fire_resistant = "1800 s"
}
line "A" { # expect pass
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/fire"
  loudspeaker "A" { tap = "6 W" }
}
