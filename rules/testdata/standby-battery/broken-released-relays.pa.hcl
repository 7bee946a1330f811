# The relays let go for an announcement, so that a cut wire overrides too: they
# are held in all day, 20 × 25 mA, and that is 12 Ah before any factor. Energised
# for announcements only, 48 Ah would do.
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
    relay    = "released to override"
    current  = "25 mA"
    loudspeaker "Bed" { tap = "3 W" }
  }
}
supply "Standby" {
  feeds        = ["Matrix", "Rack"]
  battery      = "24 V"
  capacity     = "48 Ah" # expect fail warning: 62.24 Ah at full output and 58.62 Ah with speech && 0.5 A + 0.9 A + 0.5 A for relays = 1.9 A
  standby      = "24 h"
  announcement = "30 min"
  relays       = "24 V, 1 A"
}
