# 25 + 405·√(1/8) = 168.2 W are taken at one eighth, 30 W of which go to the loudspeakers.
amplifier "Rack" { # expect fail warning: Amplifier "Rack" gives off 138.2 W (472 BTU/h) in normal use and 25 W (85 BTU/h) with no signal; the ventilation carries 100 W && Carry 38.19 W (130 BTU/h) more away && 41 m³/h of air && set by the criteria
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
criteria {
  limit "rack-heat" { ventilation = "100 W" }
}
