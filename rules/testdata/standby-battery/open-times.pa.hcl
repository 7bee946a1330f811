# How long it is to last is for the designer to say: no hours are assumed.
amplifier "Rack" {
  rated_power  = "360 W"
  battery_idle = "1.8 A"
  battery_full = "22 A"
}
supply "Standby" { # expect open: time the supply is to wait without mains && time the supply is to announce after waiting
  feeds    = ["Rack"]
  capacity = "80 Ah"
}
supply "Nothing fed" { # expect open: units that the supply feeds
  capacity     = "80 Ah"
  standby      = "24 h"
  announcement = "30 min"
}
supply "Mains" { # has no battery: not asked
  feeds   = ["Rack"]
  breaker = "16 A"
}
