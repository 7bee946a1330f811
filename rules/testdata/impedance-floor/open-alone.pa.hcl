# A line drawn without its amplifier.
line "Room" { # expect open: missing amplifier of output "8 ohm"
  output = "8 ohm"
  loudspeaker "B" { impedance = "8 ohm" }
}
