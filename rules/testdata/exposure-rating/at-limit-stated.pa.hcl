amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP55"
    space    = "Yard"
  }
}
space "Yard" {
  exposure = "IP55" # expect pass: 2 loudspeakers in "Yard" are at least IP55
}
