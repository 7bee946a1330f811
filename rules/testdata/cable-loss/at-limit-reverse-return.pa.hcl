# A reverse return to two equal loads: both have 250 m of go and return conductor to themselves (1.995 ohm each) and half of
# the current over 300 m of either conductor (4.788 ohm together). 1.995 + 1.995 + 4.788/4 = 5.187 ohm are a ninth of half a
# load of 93.366 ohm: exactly 10 %, at both.
amplifier "Rack" { rated_power = "240 W" }
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2" # expect pass: takes 10 % of the voltage && 800 m of conductor there and on round the loop, 6.384 ohm && 800 m × 7.98 ohm/km = 6.384 ohm && lie side by side
  home_run  = "250 m"
  ring_leg  = "250 m"
  return    = "reverse"
  existing "Old" { impedance = "93.366 ohm" }
  existing "Older" {
    leg       = "300 m"
    impedance = "93.366 ohm"
  }
}
