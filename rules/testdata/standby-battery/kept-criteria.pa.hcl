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
  capacity     = "68 Ah" # expect pass: need 67.75 Ah && set by the criteria
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
criteria {
  limit "standby-battery" { derating = 1 } # the maker's curve shows no loss at this rate
}
