# Horns on two lines serve the yard. The hall has a cabinet, on a line that the
# music does not reach: it does not help there.
loudspeaker_model "house/horn" { kind = "horn" }
amplifier "Rack" { rated_power = "240 W" }
space "Yard" {}
space "Hall" {}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    model    = "house/horn" # expect fail note: Player is meant to be heard in "Yard", and 3 loudspeakers
    quantity = 2
    tap      = "10 W"
    space    = "Yard"
  }
  loudspeaker "H" { # expect fail note: in "Hall", and 1 loudspeaker there is a horn
    kind     = "horn"
    tap      = "10 W"
    exposure = "IP54"
    space    = "Hall"
  }
}
line "B" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    kind  = "horn"
    tap   = "10 W"
    space = "Yard"
  }
  loudspeaker "H" {
    kind  = "wall"
    tap   = "6 W"
    space = "Hall"
  }
}
music "Player" {
  into  = "Rack"
  lines = ["A"]
}
