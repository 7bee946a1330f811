# One 8 ohm loudspeaker without a transformer was clipped onto the line: 100 ohm and 8 ohm in parallel.
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
  impedance = "7.4 ohm" # expect fail error: a loudspeaker without a transformer across the line && one voice coil of 7.99
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
