# A tap above the rating of the loudspeaker; the list has one that is within it.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity    = 3
    rated_power = "6 W"
    taps_100V   = ["10 W", "6 W", "3 W"]
    tap         = "10 W" # expect fail error: Loudspeaker "H 1", of 3 loudspeakers, receives 10 W at full output and is rated 6 W: 4 W too much && 10 W × (100 V / 100 V)² = 10 W && at most 6 W && remedy (proved) Connect it to its 6 W tap for 100 V
  }
}
