# Sends that carry two channels, or two outputs, in order.
mixer "Desk" {
  output "Left" { impedance = "150 ohm" }
  output "Right" { impedance = "150 ohm" }
  input "Stereo" { stereo = "left and right kept" }
  send "Left" { # expect pass: Left of Desk and Right come together through resistors.
    into      = "Amp"
    input     = "Line in"
    tied_with = ["Right"]
    summed_by = "resistors"
  }
  send "Tape out" { # expect pass: Tape out of Desk carries two channels, and they are summed at Tape in of Amp.
    into     = "Amp"
    input    = "Tape in"
    channels = "stereo"
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" { takes = "line" }
  input "Tape in" { stereo = "summed inside" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player" { # expect pass: Stereo of Desk keeps left and right apart, and both reach every line
  into     = "Desk"
  input    = "Stereo"
  channels = "stereo"
}
