# Every proper way.
amplifier "Amp" {
  rated_power = "120 W"
  input "Line 1" { channel = "Main" }
  input "Line 2" { channel = "Main" }
  input "Line 3" { channel = "Main" }
  input "Line 4" { stereo = "summed inside" }
  input "Line 5" { stereo = "summed inside" }
  input "Line 6" { takes = "line" }
  input "Line 7" { takes = "line" }
  input "Line 8" { stereo = "summed inside" }
  input "Mic" { takes = "microphone" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Tablet" { # expect pass: Tablet is stereo: resistors sum left and right on the way to Line 1 of Amp.
  into      = "Amp"
  input     = "Line 1"
  channels  = "stereo"
  summed_by = "resistors"
}
music "Laptop" { # expect pass: a transformer sums left and right on the way to Line 2 of Amp
  into      = "Amp"
  input     = "Line 2"
  channels  = "stereo"
  summed_by = "transformer"
}
music "Tuner" { # expect pass: its own mono output goes to Line 3 of Amp
  into      = "Amp"
  input     = "Line 3"
  channels  = "stereo"
  summed_by = "mono output"
}
music "Player" { # expect pass: Line 4 of Amp sums left and right
  into      = "Amp"
  input     = "Line 4"
  channels  = "stereo"
  summed_by = "input"
}
message "Jingles" { # expect pass: Line 5 of Amp sums left and right
  into     = "Amp"
  input    = "Line 5"
  channels = "stereo"
}
music "Two leads" { # expect pass: left and right have inputs of their own
  into      = "Amp"
  input     = "Line 6"
  channels  = "stereo"
  summed_by = "left only"
  also {
    into      = "Amp"
    input     = "Line 7"
    summed_by = "right only"
  }
}
music "Unknown" { # expect pass: Whether Unknown is stereo is not said and does not matter: Line 8 of Amp sums left and right.
  into  = "Amp"
  input = "Line 8"
}
microphone "Mic" {
  into  = "Amp"
  input = "Mic"
}
