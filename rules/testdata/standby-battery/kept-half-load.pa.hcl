# 180 W hang on 360 W: at full output 1.8 + 20.2 × 0.5 = 11.9 A, not 22 A.
amplifier "Rack" {
  rated_power   = "360 W"
  battery_volts = "24 V"
  battery_idle  = "1.8 A"
  battery_full  = "22 A"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 18
    tap      = "10 W"
  }
}
supply "Standby" {
  feeds        = ["Rack"]
  battery      = "24 V"
  capacity     = "68 Ah" # expect pass: need 67.02 Ah at full output && announcing at full output 11.9 A
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
}
