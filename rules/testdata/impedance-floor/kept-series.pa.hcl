# Four in series on 8 ohm: safe, though little power is left.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "8 ohm" # expect pass: sees 32 ohm && 4 × 8 ohm in series
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "series"
  loudspeaker "B" {
    quantity  = 4
    impedance = "8 ohm"
  }
}
