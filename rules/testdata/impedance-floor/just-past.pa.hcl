# 3.99 ohm instead of 4.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect fail error: sees 3.99 ohm && remedy (advice) Use loudspeakers with line transformers
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" { impedance = "3.99 ohm" }
}
