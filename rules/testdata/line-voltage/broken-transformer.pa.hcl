# A tap on a low-impedance output gets next to nothing.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "8 ohm" }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  loudspeaker "H" {
    tap     = "6 W"
    tap_for = "100 V" # expect fail error: the output is for loudspeakers without transformers and gives 21.91 V: it takes 0.288 W, 13.2 dB less than marked
  }
}
