amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP20" # expect fail warning: are IP20; the open sky needs at least IPX3 && 3 is rain up to 60°
    space    = "Yard"
  }
}
space "Yard" {
  outdoors = true
}
