# Five players, each brought to a mono input in a way that harms it or loses a
# channel.
amplifier "Amp" {
  rated_power = "120 W"
  input "Line 1" { channel = "Main" }
  input "Line 2" { channel = "Main" }
  input "Line 3" { channel = "Main" }
  input "Line 4" { channel = "Main" }
  input "Line 5" { stereo = "left and right kept" }
  input "Line 6" { stereo = "left only" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Tablet" {
  into      = "Amp"
  input     = "Line 1"
  channels  = "stereo"
  impedance = "600 ohm"
  summed_by = "Y-lead" # expect fail error: Tablet goes to Line 1 of Amp by a bare Y-lead && together they are 300 ohm && 1 / (1 / 600 ohm + 1 / 600 ohm) = 300 ohm && a resistor in each leg
}
music "Laptop" {
  into      = "Amp"
  input     = "Line 2"
  channels  = "stereo"
  summed_by = "pins 2 and 3" # expect fail error: Laptop has left and right on pins 2 and 3 of Line 2 of Amp: the input takes their difference
}
music "Tuner" {
  into      = "Amp"
  input     = "Line 3"
  channels  = "stereo"
  summed_by = "right only" # expect fail warning: Only the right side of Tuner goes into Line 3 of Amp: what is on the left is lost.
}
music "Guest player" {
  into     = "Amp"
  input    = "Line 4" # expect fail warning: Guest player brings two channels and Line 4 of Amp takes one: nothing is named that sums left and right. && Order a summing lead or box
  channels = "stereo"
}
music "Screen" {
  into      = "Amp"
  input     = "Line 5"
  channels  = "stereo"
  summed_by = "input" # expect fail warning: Screen is to be summed by Line 5 of Amp (summed_by = "input"), and Line 5 of Amp keeps left and right apart.
}
music "Cassette" {
  into     = "Amp"
  input    = "Line 6" # expect fail warning: Only the left side of Cassette goes into Line 6 of Amp
  channels = "stereo"
}
