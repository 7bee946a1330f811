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
  capacity     = "78 Ah" # expect fail note: enough for speech, not for full output && Measure the current
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
