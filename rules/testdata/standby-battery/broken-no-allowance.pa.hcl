# Enough when new, not when old: the supply states no factor for age, so that of the standard holds.
system "Job" {
  duty = "announcements"
}
amplifier "Rack" {
  rated_power   = "360 W"
  battery_volts = "24 V"
  battery_idle  = "1.8 A"
  battery_full  = "22 A"
}
supply "Standby" {
  feeds        = ["Rack"]
  battery      = "24 V"
  capacity     = "60 Ah" # expect fail warning: too little even for speech && at least 63.78 Ah && assumed a factor of 1.25 for age && every 0.1 A less in waiting saves 3 Ah && as in class B
  standby      = "24 h"
  announcement = "30 min"
}
