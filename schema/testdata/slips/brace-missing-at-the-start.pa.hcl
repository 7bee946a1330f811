line "North"
  home_run = "40 m"
  loudspeaker "N" tap = "6 W"
  }
}
