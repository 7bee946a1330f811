# A job that warns earlier than the check gives notes: 1 W past its limit, and what
# would put it right is said.

criteria {
  limit "load-margin" { warning_margin = "25 %" }
}

amplifier "Rack" {
  rated_power = "100 W" # expect fail warning: only 24 % in hand
}

line "North" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 12
    tap      = "6 W"
  }
  loudspeaker "Door" { tap = "4 W" }
}
