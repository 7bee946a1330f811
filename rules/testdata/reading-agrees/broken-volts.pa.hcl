# A tone at rated output should bring 100 V to the terminals.
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
  volts = "70 V" # expect fail warning: 100 V is predicted
  signal = "1 kHz tone at rated output"
}
reading "Too much" {
  line = "Hall"
  volts = "111 V" # expect fail warning: more than its voltage
  signal = "1 kHz tone at rated output"
}
