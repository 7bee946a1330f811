system "Job" { units = "US" }
amplifier "Rack" { # expect pass: 472 BTU/h && 24 cubic feet a minute of air that warms by 18 °F
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
