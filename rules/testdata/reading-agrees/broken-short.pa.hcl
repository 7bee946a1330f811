# A line of 100 ohm that reads 1.5 ohm is shorted; what it asks for is past any amplifier.
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
  impedance = "1.5 ohm" # expect fail error: a short circuit && Look for a short
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
