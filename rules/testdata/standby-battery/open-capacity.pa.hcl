# Everything is known but what is fitted: the answer says what would do.
amplifier "Rack" {
  rated_power   = "360 W"
  battery_volts = "24 V"
  battery_idle  = "1.8 A"
  battery_full  = "22 A"
}
supply "Standby" { # expect open: needs 78.06 Ah at full output and 63.78 Ah with speech && missing capacity of the battery && capacity = "80 Ah"
  feeds        = ["Rack"]
  battery      = "24 V"
  standby      = "24 h"
  announcement = "30 min"
}
