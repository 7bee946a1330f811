# Six loudspeakers on one pair of terminals: whether that is allowed depends on what the terminals are.
amplifier "Unknown" {}
line "All" { # expect open: missing output, with its voltage or its ohms of line "All"
  amplifier = "Unknown"
  loudspeaker "S" { quantity = 6 }
}
