# 120.1 ohm are just above: about two loudspeakers of ten are not there, and the chain would be open behind the eighth.
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
  impedance = "120.1 ohm" # expect fail warning: at most 120 ohm && a line that is open behind "H 8" && about 2 loudspeakers of 10 W missing
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
