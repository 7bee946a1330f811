# Held in, fed by the one supply that has volts for relays, over cable enough; a
# third conductor needs no current.
system "Depot" { duty = "emergency" }
amplifier "Rack" {
  rated_power = "120 W"
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass: Of the 14 override relays of line "Floor" the one at Room 14 gets 23.64 V of the 24 V it is made for (98.5 %). && assumed the override relays are fed from supply "Battery", the only part that states volts and current for them
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Room" {
    quantity = 14
    spacing  = "3 m"
    override = "24 V relay"
    current  = "25 mA"
    relay    = "released to override"
    loudspeaker "LRoom" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
line "Shop" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "3 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Till" {
    override = "third conductor"
    loudspeaker "LTill" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
supply "Battery" {
  relays = "24 V, 1 A" # expect pass: Supply "Battery" has 1 A for override relays, and the 14 it feeds on 1 line take 0.35 A.
}
