# Nobody says anything of the ways.
system "Yard" { wiring_rules = "Europe" } # expect open: Whether mains, data or microphone cable shares the way of 2 lines is not stated && missing what shares the way of the lines of the job
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { tap = "10 W" }
}
line "Gate" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "10 W" }
}
