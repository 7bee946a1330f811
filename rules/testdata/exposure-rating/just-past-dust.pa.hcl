amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP45" # expect fail error: are IP45
    space    = "Yard"
  }
}
space "Yard" {
  exposure = "IP55"
}
