# Nominally 8 ohm, but the real impedance dips.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "8 ohm" # expect fail error: sees 6.2 ohm at 250 Hz
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" {
    impedance    = "8 ohm"
    impedance_at = { "125 Hz" = "30 ohm", "250 Hz" = "6.2 ohm", "1 kHz" = "8.5 ohm" }
  }
}
