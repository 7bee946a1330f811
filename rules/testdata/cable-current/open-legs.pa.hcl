# All of it would be too much for the branch; what goes there depends on the legs.
amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" { # expect open: missing length of the home run of line "Left"
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 2.5 mm2"
  loudspeaker "L" { impedance = "8 ohm" }
  branch "Foyer" {
    leg   = "4 m"
    cable = "2 x 0.75 mm2"
    loudspeaker "F" {
      impedance = "8 ohm"
      leg       = "5 m"
    }
  }
}
