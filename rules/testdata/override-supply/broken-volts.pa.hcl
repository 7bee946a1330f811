# Forty relays pull an ampere through 0.75 mm²; on the second floor only half of
# them do, and the last one just works or does not. A cable of its own is named.
# The third floor's supply is one for 12 V: no cable helps.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 5 A" # expect pass: Amplifier "Rack" has 5 A for override relays, and the 60 it feeds on 2 lines take 1.5 A. && 60 × 25 mA = 1.5 A
}
amplifier "Third" {
  rated_power = "120 W"
  relays      = "12 V, 5 A" # expect pass: the 1 it feeds on 1 line takes 25 mA.
}
line "Floor 1" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 0.75 mm2" # expect fail error: Of the 40 override relays of line "Floor 1" the one at East 40 gets 17.45 V of the 24 V it is made for (72.7 %). && at least 80 % of 24 V, which is 19.2 V && 24 V at Rack − 0.7481 A × 6.76 ohm along 130 m of cable, there and back − 1.495 V along 78 m more with less current = 17.45 V at East 40 && current they draw together 0.7481 A && remedy (proved) Carry the override in a cable of its own, 2 x 2.5 mm2 or thicker: 21.56 V then arrive.
  home_run      = "130 m"
  override_from = "Rack"
  attenuator "East" {
    quantity = 40
    spacing  = "2 m"
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LEast" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
line "Floor 2" {
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "4 x 0.75 mm2" # expect fail warning: gets 19.9 V of the 24 V it is made for (82.9 %). && at least 85 % of 24 V && 2 x 1 mm2 or thicker
  home_run      = "130 m"
  override_from = "Rack"
  attenuator "West" {
    quantity = 20
    spacing  = "6 m"
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LWest" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
line "Floor 3" {
  amplifier     = "Third"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect fail error: The override relay at Third room gets 12 V of the 24 V it is made for (50 %). && Feed the relays from a supply of 24 V; Third has 12 V.
  home_run      = "5 m"
  override_from = "Third"
  attenuator "Third room" {
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LThird room" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
