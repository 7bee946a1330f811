line "North" {
  loudspeaker "N" {
    tap = "6 W"
  }
  }
  home_run = "40 m"
}
line "South" {
  home_run = "40 m"
}
}
