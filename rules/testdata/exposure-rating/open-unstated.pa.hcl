amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    space    = "Yard"
  }
  loudspeaker "Z" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP66"
    space    = "Yard"
  }
}
space "Yard" { # expect open: missing degree of protection of loudspeaker "Y" of line "Yard"
  outdoors = true
}
