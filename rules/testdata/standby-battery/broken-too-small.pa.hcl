# 24 h × 1.8 A + 0.5 h × 8.942 A of speech = 47.67 Ah: a new battery of 40 Ah is empty before.
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
  capacity     = "40 Ah" # expect fail error: draw 47.67 Ah even with speech alone && need 78.06 Ah at full output and 63.78 Ah with speech && Fit 80 Ah or more && 1.25 × (24 h × 1.8 A + 1.75 × 30 min × 22 A) = 78.06 Ah
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
