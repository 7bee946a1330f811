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
  capacity     = "80 Ah" # expect pass: 78.06 Ah
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
