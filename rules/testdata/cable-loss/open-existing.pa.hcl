# What the old equipment takes is not known.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" { # expect open: missing load of the existing equipment of existing "Old units"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  existing "Old units" {}
}
