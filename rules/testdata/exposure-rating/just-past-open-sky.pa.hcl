amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP32" # expect fail warning: are IP32
    space    = "Yard"
  }
}
space "Yard" {
  outdoors = true
}
