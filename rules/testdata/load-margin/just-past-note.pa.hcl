# One watt more than 15 % below the rating is worth a note.
amplifier "Rack" {
  rated_power = "240 W" # expect fail note: take 205 W && 205 W
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 34
    tap      = "6 W"
  }
  loudspeaker "Lobby" { tap = "1 W" }
}
