# A ring is seen whole wherever the meter is: opened anywhere, its rest is seen through the amplifier's end.
amplifier "Rack" { rated_power = "240 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  ring_leg  = "20 m"
  loudspeaker "H" {
    quantity = 10
    tap      = "10 W"
    spacing  = "5 m"
  }
}
reading "Whole" {
  line = "Ring"
  impedance = "100 ohm" # expect pass: line "Ring" at 1 kHz; 100.2 ohm
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
reading "Opened in the middle" {
  line = "Ring"
  impedance = "101 ohm" # expect pass: line "Ring" beyond "H 5", round the ring, at 1 kHz && both ends of the ring were connected to each other at the amplifier
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  beyond = "H 5"
}
