# First steps: an amplifier, one line, four loudspeakers, and no more said.
#
# This is a whole design. What it does not say is left open, and the result
# says what to write and where. The place and all figures are invented.

amplifier "Rack" { rated_power = "60 W" }

line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "S" { # S 1 … S 4, in the order the cable meets them
    quantity = 4
    tap      = "6 W"
  }
}
