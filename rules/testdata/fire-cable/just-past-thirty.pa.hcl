# One minute short.
system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/fire" {
  size           = "1.5 mm2"
  cores          = 2
  fire_resistant = "29 min"
}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/fire" # expect fail error: On emergency line "A", cable "own/fire" works for 29 min in a fire; 30 min are wanted && EN 50200 && remedy (advice) Lay cable that is stated to work for 30 min or longer
  loudspeaker "A" { tap = "6 W" }
}
