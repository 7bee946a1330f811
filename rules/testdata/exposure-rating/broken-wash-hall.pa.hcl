amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "W" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP21" # expect fail error: 2 loudspeakers in "Yard" (loudspeaker "W" of line "Yard") are IP21; the place needs at least IP65 && as the space states
    space    = "Yard"
  }
  loudspeaker "V" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP66"
    space    = "Yard"
  }
}
space "Yard" {
  exposure = "IP65"
}
