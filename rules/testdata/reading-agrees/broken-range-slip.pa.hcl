# A factor of ten either way is a slip of the range as well as a fault.
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
reading "Low" {
  line = "Hall"
  impedance = "10 ohm" # expect fail error: a slip of the meter's range (100 ohm)
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
reading "High" {
  line = "Hall"
  impedance = "1 kohm" # expect fail warning: a slip of the meter's range (100 ohm) && a tenth
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
