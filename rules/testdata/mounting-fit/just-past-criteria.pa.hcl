# The criteria allow two metres.
space "Hall" { height = "8 m" }
line "A" {
  output = "100 V"
  loudspeaker "A" { # expect pass
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Hall"
    height = "6 m"
  }
  loudspeaker "B" {
    kind   = "ceiling"
    tap    = "6 W"
    space  = "Hall"
    height = "5.9 m" # expect fail note: at least 6 m && set by the criteria
  }
}
criteria {
  limit "mounting-fit" { below_ceiling = "2 m" }
}
