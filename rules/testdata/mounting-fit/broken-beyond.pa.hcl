# Places outside the room they belong to: a slip of the tape or of the keyboard.
space "Hall" {
  length = "20 m"
  width  = "12 m"
  height = "5 m"
}
space "L" {
  outline = [["0 m", "0 m"], ["24 m", "0 m"], ["24 m", "8 m"], ["14 m", "8 m"], ["14 m", "14 m"], ["0 m", "14 m"]]
  height  = "4 m"
}
space "Yard" {
  length   = "20 m"
  width    = "12 m"
  outdoors = true
}
line "A" {
  output = "100 V"
  loudspeaker "Far" {
    kind     = "wall"
    tap      = "6 W"
    space    = "Hall"
    position = ["60 m", "4 m"] # expect fail note: hangs 40 m beyond the walls of "Hall"
  }
  loudspeaker "Row" {
    kind     = "column"
    quantity = 3
    tap      = "6 W"
    space    = "L"
    position = ["2 m", "0 m"]
    to       = ["20 m", "10 m"] # expect fail note: hangs 2 m beyond the walls of "L"
  }
  loudspeaker "High" {
    kind     = "pendant"
    tap      = "6 W"
    space    = "Hall"
    position = ["4 m", "4 m", "6 m"] # expect fail note: hangs at 6 m in "Hall", which is 5 m high
  }
  loudspeaker "Ceiling" {
    kind     = "ceiling"
    tap      = "6 W"
    space    = "Hall"
    position = ["4 m", "13 m"] # expect fail note: hangs 1 m beyond the walls of "Hall"
  }
  loudspeaker "Pole" {
    kind     = "horn"
    tap      = "6 W"
    space    = "Yard"
    height   = "6 m"
    position = ["30 m", "4 m"]
  }
  loudspeaker "Recess" {
    kind     = "wall"
    tap      = "6 W"
    space    = "Hall"
    height   = "4.5 m"
    position = ["20.5 m", "4 m"]
  }
}
