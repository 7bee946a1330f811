# Only the total length is known. If all hangs at its end, that is least.
amplifier "Amp" { rated_power = "1000 W" }
line "All" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "18 AWG" # expect fail error: carries at least 12.79 A at full output; its conductors may carry 6 A && the line takes 960 W / 70.7 V = 13.58 A, and if all of it hangs at the far end 12.79 A && nearer to the amplifier it takes more && remedy (proved) Lay 14 AWG && Split line "All" in two
  length    = "25 ft"
  loudspeaker "Y" {
    quantity = 16
    tap      = "60 W"
  }
}
line "Few" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "18 AWG" # expect pass: carries at most 3.394 A
  length    = "25 ft"
  loudspeaker "Z" {
    quantity = 4
    tap      = "60 W"
  }
}
