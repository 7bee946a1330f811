# In the ceiling, straight down or a little to one side; and others on the wall.
# Where the height of the space is not known, nothing speaks against a ceiling.
space "Hall" { height = "3 m" }
space "Lobby" {}
line "A" {
  output = "100 V"
  loudspeaker "A" { # expect pass: nothing says that it hangs elsewhere
    kind     = "ceiling"
    quantity = 4
    tap      = "6 W"
    space    = "Hall"
    height   = "2.8 m"
    tilt     = "90 deg"
  }
  loudspeaker "B" { # expect pass
    kind  = "ceiling"
    tap   = "6 W"
    space = "Hall"
    tilt  = "60 deg"
    aim   = "0 deg"
  }
  loudspeaker "C" { # expect pass
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Lobby"
    height = "2 m"
  }
  loudspeaker "W" {
    kind   = "wall"
    tap    = "6 W"
    height = "2 m"
    tilt   = "10 deg"
  }
}
