# Exactly ten times, and exactly five at a microphone.
mixer "Mixer" {
  input "Aux" { impedance = "6 kohm" }
  input "Mic" {
    takes     = "microphone"
    impedance = "1 kohm"
  }
}
music "Player" {
  impedance = "600 ohm"
  into      = "Mixer"
  input     = "Aux" # expect pass: times its own impedance 10
}
microphone "Lectern" {
  impedance = "200 ohm"
  into      = "Mixer"
  input     = "Mic" # expect pass: times its own impedance 5
}
