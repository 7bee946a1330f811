# All loudspeakers hang on the terminals for 70 V and draw twice their watts.
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
  impedance = "50 ohm" # expect fail warning: all loudspeakers on their 70.7 V terminals
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
