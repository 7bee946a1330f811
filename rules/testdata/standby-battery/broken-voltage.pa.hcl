amplifier "A" {
  rated_power   = "120 W"
  battery_volts = "48 V"
  battery_idle  = "0.5 A"
  battery_full  = "4 A"
}
amplifier "B" {
  rated_power   = "120 W"
  battery_volts = "27.6 V" # what a 24 V battery has while it is charged
  battery_idle  = "0.5 A"
  battery_full  = "8 A"
}
supply "One" {
  feeds        = ["A"]
  battery      = "24 V" # expect fail error: asks for another voltage: "A" for 48 V && Fit a battery of 48 V
  capacity     = "80 Ah"
  standby      = "24 h"
  announcement = "30 min"
}
supply "Both" {
  feeds        = ["A", "B"]
  battery      = "24 V" # expect fail error: "A" for 48 V && from a battery of their own
  capacity     = "80 Ah"
  standby      = "24 h"
  announcement = "30 min"
}
supply "Other" {
  feeds        = ["B"]
  battery      = "24 V"
  capacity     = "80 Ah" # expect pass: with speech
  standby      = "24 h"
  announcement = "30 min"
}
