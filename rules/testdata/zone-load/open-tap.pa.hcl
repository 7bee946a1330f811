# A tap that is not stated keeps the zone open.
amplifier "Rack" { # expect open: missing tap of loudspeaker "S"
  rated_power = "240 W"
  output "Zone 1" {
    volts        = "100 V"
    highest_load = "60 W"
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" { quantity = 8 }
}
