# 24 h at 1.8 A and 30 min at 22 A: 1.25 × (43.2 + 1.75 × 11) = 78.0625 Ah by the formula of BS 5839-1.
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
  capacity     = "78.0625 Ah" # expect pass: need 78.06 Ah && waiting 1.8 A && announcing at full output 22 A && BS 5839-1:2025 Annex E
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
