# What is known is too much already.
amplifier "A" { # expect fail warning: 1 unit gives off 138.2 W && 1 unit is left out
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
amplifier "B" { rated_power = "240 W" }
criteria {
  limit "rack-heat" { ventilation = "100 W" }
}
