# Screened cable has much capacitance; it is stated, and the line is short.
amplifier "Rack" { rated_power = "120 W" }
cable_model "own/screened" {
  size        = "1 mm2"
  cores       = 2
  shield      = "foil"
  inductance  = "0.5 uH/m"
  capacitance = "250 pF/m"
}
line "Studio" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/screened" # expect pass: more at 10 kHz than at 1 kHz
  home_run  = "250 m"
  loudspeaker "S" { tap = "60 W" }
}
