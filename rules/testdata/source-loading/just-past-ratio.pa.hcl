# A little less than ten times, and than five.
mixer "Mixer" {
  input "Aux" { impedance = "5990 ohm" }
  input "Mic" {
    takes     = "microphone"
    impedance = "990 ohm"
  }
}
music "Player" {
  impedance = "600 ohm"
  into      = "Mixer"
  input     = "Aux" # expect fail warning: 9.98 times its own impedance
}
microphone "Lectern" {
  impedance = "200 ohm"
  into      = "Mixer"
  input     = "Mic" # expect fail warning: 4.95 times its own impedance
}
