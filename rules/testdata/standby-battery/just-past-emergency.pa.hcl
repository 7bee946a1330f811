# Alarm tones are given at rated output and last.
system "Job" {
  duty = "emergency"
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
  capacity     = "78 Ah" # expect fail warning: enough for speech, not for full output
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
