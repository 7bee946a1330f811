# A reading of nothing, one of no line, and one of a line with old equipment of unknown load.
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
  existing "Old horns" { leg = "0 m" }
}
reading "Empty" { line = "Hall" } # expect open: missing what the meter showed
reading "Nowhere" {
  impedance = "100 ohm" # expect open: missing line that was measured
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
reading "Old" {
  line = "Hall"
  impedance = "60 ohm" # expect open: load of the existing equipment
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
