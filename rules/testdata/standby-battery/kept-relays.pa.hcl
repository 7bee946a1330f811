# Waiting 0.5 + 0.9 A; announcing 0.5 A, 0.9 + 27.1 × 60/480 A for the 60 W that hang
# on 480 W, and 20 relays of 25 mA.
mixer "Matrix" {
  battery_idle = "0.5 A"
  send "Out" { into = "Rack" }
}
amplifier "Rack" {
  rated_power   = "480 W"
  battery_volts = "24 V"
  battery_idle  = "0.9 A"
  battery_full  = "28 A"
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  override_from = "Matrix"
  attenuator "Room" {
    quantity = 20
    rating   = "6 W"
    lowest   = "off"
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "Bed" { tap = "3 W" }
  }
}
supply "Standby" {
  feeds        = ["Matrix", "Rack"]
  battery      = "24 V"
  capacity     = "48 Ah" # expect pass: need 47.78 Ah && 0.5 A + 4.288 A + 0.5 A for relays = 5.288 A && gives what the loudspeakers on it take && takes the same with and without a signal && override relays are energised for announcements only
  standby      = "24 h"
  announcement = "30 min"
  relays       = "24 V, 1 A"
}
