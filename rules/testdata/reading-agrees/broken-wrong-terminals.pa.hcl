# One loudspeaker of ten is on its 25 V terminals and draws sixteen times its 10 W: 250 W, 40 ohm. The amplifier gives 240 W.
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
  impedance = "40 ohm" # expect fail error: 1 loudspeaker on the 25 V terminals && each draws 16 times its marking
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
