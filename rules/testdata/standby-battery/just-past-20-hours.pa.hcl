# The battery is emptied just within 20 h: a smaller one would be emptied faster,
# derated, and would not do. D = 1: 1.25 × (15.2 + 0.5) = 19.63 Ah, below 20 h × 1 A.
mixer "Matrix" {
  battery_idle = "0.76 A"
  battery_full = "1 A"
  send "Out" {
    into = "Rack"
  }
}
amplifier "Rack" { rated_power = "360 W" }
supply "Standby" {
  feeds        = ["Matrix"]
  capacity     = "19.9 Ah" # expect fail note: need 20 Ah
  standby      = "20 h"
  announcement = "30 min"
  ageing       = 1.25
}
