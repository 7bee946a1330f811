# A line of which the output is not stated may be on either zone.
amplifier "Rack" { # expect open: missing output, with its voltage or its ohms of line "Somewhere" # expect open: missing output, with its voltage or its ohms of line "Somewhere"
  rated_power = "240 W"
  output "Zone" {
    quantity     = 2
    volts        = "100 V"
    highest_load = "60 W"
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" { tap = "50 W" }
}
line "Somewhere" {
  amplifier = "Rack"
  loudspeaker "T" { tap = "20 W" }
}
