# Twelve floors of a hotel at once ask for more than the battery has for relays.
# Beside it a supply of 48 V on relays for 24 V.
amplifier "Amp A" {
  rated_power = "120 W"
}
amplifier "Amp B" {
  rated_power = "120 W"
}
line "Floor" {
  amplifier     = "Amp A"
  output        = "100 V"
  cable         = "4 x 1.5 mm2" # expect pass
  home_run      = "20 m"
  override_from = "Amp A"
  attenuator "Room" {
    quantity = 170
    spacing  = "0.1 m"
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LRoom" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
line "Annexe" {
  amplifier     = "Amp B"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Amp B"
  attenuator "Suite" {
    override = "24 V relay"
    current  = "25 mA"
    loudspeaker "LSuite" {
      tap = "1 W"
      leg = "2 m"
    }
  }
}
supply "Battery" {
  feeds  = ["Amp A"]
  relays = "24 V, 4 A" # expect fail error: Supply "Battery" has 4 A for override relays, and the 170 it feeds on 1 line take 4.25 A. && at most 4 A, what it has for relays && remedy (proved) Give them a supply of 24 V, 4.5 A or more.
}
supply "Other battery" {
  feeds  = ["Amp B"]
  relays = "48 V, 4 A" # expect fail error: Supply "Other battery" gives 48 V to override relays made for 24 V. && at most 110 % of 24 V, which is 26.4 V # expect pass: the 1 it feeds on 1 line takes 25 mA
}
