# Three 8 ohm loudspeakers in parallel are 2.67 ohm.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect fail error: needs at least 4 ohm and sees 2.667 ohm && 3 × 8 ohm in parallel && at least 4 ohm && remedy (computed) Connect at most 2 loudspeakers of 8 ohm in parallel
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" {
    quantity  = 3
    impedance = "8 ohm"
  }
}
