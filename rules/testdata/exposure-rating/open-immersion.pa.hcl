# IP67 tells that it may lie in water, not that it stands a jet; IPX5 tells nothing of dust.
amplifier "Rack" { rated_power = "120 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "5 W"
    exposure = "IP67"
    space    = "Yard"
  }
  loudspeaker "Z" {
    quantity = 2
    tap      = "5 W"
    exposure = "IPX5"
    space    = "Yard"
  }
}
space "Yard" { # expect open: tells of IP65 (IP67 does not) of loudspeaker "Y" && (IPX5 does not) of loudspeaker "Z"
  exposure = "IP65"
}
