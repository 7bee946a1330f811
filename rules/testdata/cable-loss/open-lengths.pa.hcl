# Neither lengths nor cable are stated, and one tap is not.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" { # expect open: missing length of the home run of line "Yard" && missing cable between neighbours of the run of loudspeaker "H" && missing cable of line "Yard" && missing length of the leg that leads to it of loudspeaker "I" && missing tap of loudspeaker "I"
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 2
    tap      = "10 W"
  }
  loudspeaker "I" {}
}
