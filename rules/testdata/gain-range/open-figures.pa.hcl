# No level, a level without reference, no sensitivity, a switch whose sensitivity
# is not that of the model, and a knob without dB.
amplifier_model "test/mixer" {
  input "Mic/line" {
    takes       = "microphone"
    sensitivity = "-56 dBV"
  }
}
amplifier "Rack" {
  model       = "test/mixer"
  rated_power = "120 W"
  input "Mic/line" { setting = "line" }
  input "Aux 1" { sensitivity = "-20 dBV" }
  input "Aux 2" { sensitivity = "-20 dBV" }
  input "Aux 3" { takes = "line" }
  input "Aux 4" {
    sensitivity = "-20 dBV"
    setting     = "12 o'clock"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player 1" {
  into  = "Rack"
  input = "Aux 1" # expect open: nominal level of music "Player 1"
}
music "Player 2" {
  into  = "Rack"
  input = "Aux 2" # expect open: reference of the level (dBV, dBu or volts) of music "Player 2"
  level = "0 dB"
}
music "Player 3" {
  into  = "Rack"
  input = "Aux 3" # expect open: sensitivity of input "Aux 3" of amplifier "Rack"
  level = "-10 dBV"
}
music "Player 4" {
  into  = "Rack"
  input = "Mic/line" # expect open: sensitivity with its switch at line of input "Mic/line"
  level = "-10 dBV"
}
music "Player 5" {
  into  = "Rack"
  input = "Aux 4" # expect open: Where "12 o'clock" leaves Player 5 cannot be told && setting of the gain control in dB
  level = "-10 dBV"
}
music "Player 6" {
  into  = "Rack" # expect open: input it goes to of music "Player 6"
  level = "-10 dBV"
}
