amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP54" # expect fail error: are IP54; the place needs at least IP55
    space    = "Yard"
  }
}
space "Yard" {
  exposure = "IP55"
}
