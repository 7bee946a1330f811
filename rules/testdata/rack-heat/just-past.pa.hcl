amplifier "Rack" { # expect fail warning: gives off 25 W (85 BTU/h) in normal use && the ventilation carries 24.9 W
  rated_power = "240 W"
  mains_idle  = "20 W"
  mains_full  = "300 W"
}
criteria {
  limit "rack-heat" { ventilation = "24.9 W" }
}
