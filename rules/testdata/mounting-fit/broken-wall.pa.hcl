# High on the walls of a tall hall, level, or just aimed across it.
space "Hall" { height = "9 m" }
line "A" {
  output = "100 V"
  loudspeaker "Tilted" {
    kind     = "ceiling"
    quantity = 4
    tap      = "6 W"
    space    = "Hall"
    height   = "5 m"
    tilt     = "10 deg" # expect fail note: tilted 10 deg down from level && Choose a wall loudspeaker
  }
  loudspeaker "Aimed" {
    kind  = "ceiling"
    tap   = "6 W"
    space = "Hall"
    aim   = "90 deg" # expect fail note: aimed in plan
  }
  loudspeaker "Low" {
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Hall"
    height = "5 m" # expect fail note: hangs at 5 m in "Hall", which is 9 m high && at least 8 m
  }
}
