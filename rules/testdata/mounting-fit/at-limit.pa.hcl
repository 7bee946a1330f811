# Half way between level and straight down; one metre below the height of the space.
space "Hall" { height = "4 m" }
line "A" {
  output = "100 V"
  loudspeaker "A" { # expect pass
    kind = "ceiling"
    tap  = "6 W"
    tilt = "45 deg"
  }
  loudspeaker "B" { # expect pass
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Hall"
    height = "3 m"
  }
}
