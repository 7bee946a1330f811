# Exactly the rating, and a tap above it of which the cable takes enough.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1 mm2"
  home_run  = "0 m"
  loudspeaker "H" { # expect pass: receives at most 6 W and is rated 6 W
    rated_power = "6 W"
    tap         = "6 W"
  }
  loudspeaker "Far" { # expect pass: receives at most 96.95 W
    leg         = "40 m"
    rated_power = "98 W"
    tap         = "100 W"
  }
}
