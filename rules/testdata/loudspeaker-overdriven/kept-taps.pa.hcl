# A tap within the rating, and one without a rating from the loudspeaker's own list.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { # expect pass: receives at most 6 W and is rated 10 W
    rated_power = "10 W"
    tap         = "6 W"
  }
  loudspeaker "I" { # expect pass: on a tap of its own
    taps_100V = ["6 W", "3 W"]
    tap       = "3 W"
  }
}
