# 1.21 without a unit: 1.21 ohm or 1.21 kohm.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "0 m"
  loudspeaker "H" {
    quantity = 10
    tap      = "10 W"
    spacing  = "0 m"
  }
}
reading "First fix" {
  line = "Hall"
  impedance = "1.21" # expect open: 1.21 ohm (8264 W at 100 V && or 1.21 kohm (8.264 W && missing unit of the reading
  instrument = "ohmmeter"
}
