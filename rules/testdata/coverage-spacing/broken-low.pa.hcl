# Under a gallery the ceiling is no higher than the ears of people who stand.
line "Gallery" {
  output = "100 V"
  loudspeaker "G" { # expect fail warning: hangs no higher than the ears && Hang them above the ears
    kind     = "ceiling"
    coverage = "120 deg"
    tap      = "3 W"
    space    = "Under the gallery"
  }
}
space "Under the gallery" {
  length    = "6 m"
  width     = "2 m"
  height    = "1.5 m"
  listeners = "standing"
}
