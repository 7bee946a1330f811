# Horns alone, and the music comes there.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { # expect fail note: Player is meant to be heard on line "Yard", and 4 loudspeakers there are all horns && keep the music off
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
  }
}
music "Player" { into = "Rack" }
