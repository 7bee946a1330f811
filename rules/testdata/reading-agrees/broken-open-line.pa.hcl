# Hardly anything is seen: the cable is broken near the rack.
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
  impedance = "40 kohm" # expect fail warning: a line that is open before its first loudspeaker
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
