# Switching: 20 + 280/8 = 55 W are taken at one eighth, 30 W go to the loudspeakers.
amplifier "Rack" { # expect pass: gives off 25 W && at most 25 W
  rated_power = "240 W"
  mains_idle  = "20 W"
  mains_full  = "300 W"
}
criteria {
  limit "rack-heat" { ventilation = "25 W" }
}
