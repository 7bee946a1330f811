# Half the load is seen behind the opened joint: the ring is open somewhere else as well, and not at a place that a chain's
# sums could tell.
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
reading "Opened in the middle" {
  line = "Ring"
  impedance = "200 ohm" # expect fail warning: beyond "H 5", round the ring, at 1 kHz && remedy (computed) Part the two ends of the ring at the amplifier, open it in the middle and measure each half
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  beyond = "H 5"
}
reading "Not connected" {
  line = "Ring"
  impedance = "40 kohm" # expect fail warning: a ring of which both ends are open
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
