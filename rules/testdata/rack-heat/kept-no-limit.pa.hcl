amplifier "A" { # expect pass: 3 units give off 183.2 W (625 BTU/h) in normal use and 65 W (222 BTU/h) with no signal && 138.2 W + 25 W + 20 W && mind Ventilation has to carry up to 183.2 W
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
amplifier "B" {
  rated_power = "240 W"
  mains_idle  = "20 W"
  mains_full  = "300 W"
}
mixer "M" { mains_idle = "20 W" }
