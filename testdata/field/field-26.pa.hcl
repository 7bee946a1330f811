# A field report: what resistor loads a 20 W amplifier with 25 V and 70 V outputs
# on the bench? 31.25 ohm and 250 ohm, "70 V" being 70.7 V; the same figures are the
# lowest impedance that the rating implies. A test load is meant to take the whole
# rating, so that the margin is set to nothing here.
amplifier "Bench at 70 V" {
  rated_power = "20 W" # expect load-margin pass: lowest impedance that the rating implies at 70.7 V 250 ohm ((70.7 V)² / 20 W = 250 ohm) && 1 × 20 W (250 ohm at 70.7 V)
}
amplifier "Bench at 25 V" {
  rated_power = "20 W" # expect load-margin pass: lowest impedance that the rating implies at 25 V 31.25 ohm
}
line "Test at 70 V" {
  amplifier = "Bench at 70 V"
  output    = "70 V"
  existing "Resistor" { impedance = "250 ohm" }
}
line "Test at 25 V" {
  amplifier = "Bench at 25 V"
  output    = "25 V"
  existing "Resistor" { impedance = "31.25 ohm" }
}
criteria {
  limit "load-margin" {
    warning_margin = "0 %"
    note_margin    = "0 %"
  }
}
