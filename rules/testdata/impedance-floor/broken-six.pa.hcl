# Six of them: three groups of two in series, the groups in parallel, would do.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect fail error: sees 1.333 ohm && remedy (computed) Wire them as 3 groups of 2 in series, the groups in parallel: 5.333 ohm
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" {
    quantity  = 6
    impedance = "8 ohm"
  }
}
