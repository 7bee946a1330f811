# Under a wide roof the designer asks for drops only.
amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP32"
    space    = "Yard"
  }
}
space "Yard" {
  outdoors = true # expect pass: at least IPX2 && set by the criteria
}
criteria {
  limit "exposure-rating" { outdoor_water = 2 }
}
