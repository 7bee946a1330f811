# "70 V" and "70.7 V" are the same line; a marking within 2 % is the same voltage.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" { # expect pass: on a tap for 70.7 V
    tap     = "6 W"
    tap_for = "70.7 V"
  }
  loudspeaker "I" { # expect pass: on a tap for 72.1 V
    tap     = "6 W"
    tap_for = "72.1 V"
  }
}
