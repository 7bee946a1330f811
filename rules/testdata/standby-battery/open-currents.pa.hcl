mixer "Matrix" {}
amplifier "Rack" {
  rated_power  = "120 W"
  battery_full = "8 A"
}
supply "Standby" { # expect open: with no signal of mixer "Matrix" && with no signal of amplifier "Rack"
  feeds        = ["Matrix", "Rack"]
  capacity     = "80 Ah"
  standby      = "24 h"
  announcement = "30 min"
}
