# Rain up to 60° from the vertical is what 3 stands for.
amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP33"
    space    = "Yard"
  }
}
space "Yard" {
  outdoors = true # expect pass: at least IPX3
}
