# The hall states nothing and is not asked; the yard is.
amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP66"
    space    = "Yard"
  }
  loudspeaker "H" {
    quantity = 2
    tap      = "5 W"
    space    = "Hall"
  }
}
space "Yard" {
  outdoors = true # expect pass: at least IPX3
}
space "Hall" { height = "3 m" }
space "Lawn" { outdoors = true }
