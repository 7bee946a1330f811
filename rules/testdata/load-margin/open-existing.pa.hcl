# Old equipment of which nothing is known keeps the sum open.
amplifier "Rack" { # expect open: load of the existing equipment
  rated_power = "240 W"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  existing "Old units" { quantity = 3 }
}
