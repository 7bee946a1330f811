# A ring with one load, a kilometre from it either way: two loops of 15.96 ohm in parallel are 7.98 ohm, a ninth of it, and
# so a drop of exactly 10 %.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect pass: takes 10 % of the voltage && 1000 m of cable one way (15.96 ohm there and back) and 1000 m the other (15.96 ohm)
  home_run  = "1000 m"
  ring_leg  = "1000 m"
  existing "Old units" { impedance = "71.82 ohm" }
}
