# 1.2 × (24 h × 1.8 A + 0.5 h × 22 A) = 65.04 Ah: a margin of 20 % and no other factor.
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
  capacity     = "66 Ah" # expect pass: need 65.04 Ah && 57.21 Ah with speech && NFPA 72 10.6.7 && a factor of 1.2 for age
  standby      = "24 h"
  announcement = "30 min"
}
