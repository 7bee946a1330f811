# Whether the system serves emergencies is not said.
system "Mill" { wiring_rules = "Europe" } # expect open: missing duty of the system
amplifier "Rack" { rated_power = "240 W" }
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  loudspeaker "A" { tap = "6 W" }
}
