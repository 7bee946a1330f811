# 480 W for 36 W: 20.8 ohm and more are driven without tripping, and the line is
# 278 ohm. A short behind 300 m of thin cable is no more than a heavy load to it.
amplifier "Rack" { rated_power = "480 W" } # expect fail note: 13.3 times the 36 W && 20.83 ohm && at most 360 W (10 × 36 W) && common practice && Measure the impedance
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 6
    tap      = "6 W"
  }
}
