# 85 % of 24 V is 20.4 V: 20.6261 V × 240 / (240 + 2.66) exactly, at the end of
# 100 m of 1.5 mm². The two relays of the other unit take exactly what it has, at
# 110 % of 24 V.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "20.6261 V, 0.1 A" # expect pass: has 0.1 A for override relays, and the 1 it feeds on 1 line takes 0.1 A.
}
amplifier "Other" {
  rated_power = "120 W"
  relays      = "26.4 V, 0.2 A" # expect pass: take 0.2 A
}
line "Floor" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass: gets 20.4 V of the 24 V it is made for (85 %).
  home_run      = "100 m"
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
line "Hall" {
  amplifier     = "Other"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass
  home_run      = "0 m"
  override_from = "Other"
  attenuator "Hall control" {
    quantity = 2
    spacing  = "3 m"
    override = "24 V relay"
    current  = "100 mA"
    loudspeaker "LHall control" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
