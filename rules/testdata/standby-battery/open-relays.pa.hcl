amplifier "Rack" {
  rated_power  = "120 W"
  battery_idle = "0.5 A"
  battery_full = "8 A"
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  override_from = "Rack"
  attenuator "Room" {
    override = "24 V relay"
    loudspeaker "Bed" { tap = "3 W" }
  }
}
supply "Standby" { # expect open: current of the override relay of attenuator "Room"
  feeds        = ["Rack"]
  capacity     = "80 Ah"
  standby      = "24 h"
  announcement = "30 min"
}
