# 90 V are just within 10 % of 100 V.
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
  volts = "90 V" # expect pass: within 10 % of 100 V
  signal = "1 kHz tone at rated output"
  at = "H 10"
}
