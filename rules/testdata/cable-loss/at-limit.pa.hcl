# Loop resistance of exactly a ninth of the load is a drop of exactly 10 %.
# 500 m of 2.5 mm² class 5 are 7.98 ohm there and back; nine times that is 71.82 ohm.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect pass: takes 10 % of the voltage
  home_run  = "500 m"
  existing "Old units" { impedance = "71.82 ohm" }
}
