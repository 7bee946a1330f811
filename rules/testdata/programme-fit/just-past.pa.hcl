# The cabinet hangs in another space: the yard has one horn.
amplifier "Rack" { rated_power = "240 W" }
space "Yard" {}
space "Terrace" {}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { # expect fail note: 1 loudspeaker there is a horn
    kind  = "horn"
    tap   = "10 W"
    space = "Yard"
  }
  loudspeaker "T" {
    kind  = "wall"
    tap   = "6 W"
    space = "Terrace"
  }
}
music "Player" { into = "Rack" }
