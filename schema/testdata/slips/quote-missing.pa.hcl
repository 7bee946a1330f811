line "North {
  home_run    = "40 m
  cable       = 16/2"
  containment = "pipe # of steel
  shared_with = ["mains", "data]
  loudspeaker "N" { tap = "6 W }
  loudspeaker O" {
    tap = "6 W"
  }
}
