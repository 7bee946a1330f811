# There is no ceiling under the open sky. The garden type is in order.
loudspeaker_model "house/ceiling" { kind = "ceiling" }
space "Yard" { outdoors = true }
line "A" {
  output = "100 V"
  loudspeaker "Y" {
    model = "house/ceiling" # expect fail note: "Yard" is open to the sky
    tap   = "6 W"
    space = "Yard"
  }
  loudspeaker "G" {
    kind  = "garden"
    tap   = "6 W"
    space = "Yard"
  }
}
