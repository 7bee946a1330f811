# Blocks and values that are not there, or stand in the wrong place.
tap = "6 W"
speaker "S" {}
transformer "T" {}
loudspeaker "S" {}
line "North" {
  space "Hall" {}
  selector "Wall" {}
  loudspeaker = "S"
  home_run { length = "40 m" }
  colour = "red"
  reserve = "6 dB"
  send "X" {}
  loudspeaker "N" {
    input "I" {}
    hight = "3 m"
    rating = "6 W"
  }
}
safety {
  line "X" {}
}
criteria {
  limit "load-margin" {
    reserve = ["10 %"]
    block "x" {}
  }
}
use { file = "" }
use { file = "a.pa.hcl" }
use { file = "${given.x}.pa.hcl" }
use {}
cable_model "made/cable" {}
criterion "Drop" { each = "lines" }
