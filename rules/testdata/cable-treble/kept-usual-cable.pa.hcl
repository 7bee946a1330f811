# A hall, and a long yard line: no cable says its inductance, and the most it could
# have does no harm. Raised treble is none lost.
amplifier "Rack" { rated_power = "480 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2" # expect pass: takes no more at 10 kHz than at 1 kHz
  home_run  = "20 m"
  loudspeaker "H" {
    quantity = 12
    tap      = "6 W"
    spacing  = "5 m"
  }
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 4 mm2" # expect pass: takes at most && more at 10 kHz than at 1 kHz at "Y 5" && its inductance is 0.33 to 0.69 µH and its capacitance 33 to 92 pF a metre
  home_run  = "400 m"
  loudspeaker "Y" {
    quantity = 8
    tap      = "30 W"
    spacing  = "25 m"
  }
}
