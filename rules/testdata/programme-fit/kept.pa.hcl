# A cabinet plays the music in the yard, and the calls for the gate are no music.
amplifier "Rack" { rated_power = "240 W" }
space "Yard" {}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { # expect pass: Music in "Yard" comes from more than horns
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
    space    = "Yard"
  }
  loudspeaker "T" {
    kind  = "wall"
    tap   = "6 W"
    space = "Yard"
  }
}
line "Gate" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" {
    kind     = "horn"
    quantity = 4
    tap      = "10 W"
  }
}
music "Player" {
  into  = "Rack"
  lines = ["A"]
}
microphone "Desk" { into = "Rack" }
