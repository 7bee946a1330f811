# A degree and a centimetre past.
space "Hall" { height = "4 m" }
line "A" {
  output = "100 V"
  loudspeaker "A" {
    kind = "ceiling"
    tap  = "6 W"
    tilt = "44 deg" # expect fail note: 44 deg && at least 45 deg
  }
  loudspeaker "B" {
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Hall"
    height = "2.99 m" # expect fail note: at least 3 m
  }
}
