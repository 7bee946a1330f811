# The conductors of the override count as fed from the home run alone: that they are joined up at both ends of a ring is
# more than is promised.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 0.5 A" # expect pass: takes 0.1 A
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass: gets 23.74 V of the 24 V && fed from the home run alone, not from the ring leg too
  home_run      = "100 m"
  ring_leg      = "40 m"
  override_from = "Rack"
  attenuator "Room" {
    override = "24 V relay"
    current  = "100 mA"
    loudspeaker "LRoom" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
