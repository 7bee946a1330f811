# A loudspeaker without a transformer across the line is next to a short circuit.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "Old" { # expect pass: is on a tap for 70.7 V
    quantity = 4
    tap      = "5 W"
  }
  loudspeaker "Loft" { impedance = "8 ohm" } # expect fail error: asks for 625 W of an amplifier of 120 W && (70.7 V)² / 8 ohm = 625 W && remedy (computed) Choose a tap of at most 100 W for it: the others already take 20 W of 120 W
}
