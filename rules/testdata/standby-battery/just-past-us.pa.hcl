system "Job" {
  duty         = "announcements"
  wiring_rules = "US"
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
  capacity     = "65 Ah" # expect fail note: need 65.04 Ah
  standby      = "24 h"
  announcement = "30 min"
}
