# Exactly the rating: nothing is left, and nothing is too much.
amplifier "Rack" {
  rated_power = "60 W" # expect fail warning: its loudspeakers take 60 W: nothing in hand.
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 10
    tap      = "6 W"
  }
}
