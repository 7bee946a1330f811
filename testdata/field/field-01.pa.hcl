# A field report: a church took a spare loudspeaker, clipped it to the wires of a
# hallway loudspeaker for the choir loft, and the whole system went silent. The
# hallway units have line transformers, the spare one has none. Names are invented.
amplifier "Amp" {
  rated_power = "100 W" # expect load-margin fail error: 615 W too much && 2 × 20 W + 10 × 5 W + 1 × 625 W (8 ohm across 70.7 V) = 715 W
}
line "Hallway" {
  amplifier = "Amp"
  output    = "70 V"
  loudspeaker "Big" {
    quantity = 2
    tap      = "20 W"
  }
  loudspeaker "Small" {
    quantity = 10
    tap      = "5 W"
  }
  loudspeaker "Choir loft" { impedance = "8 ohm" } # expect line-voltage fail error: it asks for 625 W of an amplifier of 100 W and silences the whole line && (70.7 V)² / 8 ohm = 625 W && remedy (advice) Give it a line transformer for 70.7 V && remedy (computed) Choose a tap of at most 10 W for it: the others already take 90 W of 100 W
}
