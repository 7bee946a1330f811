# A little more of each.
amplifier "Rack" {
  input "Mic 1" { takes = "microphone" }
  input "Mic 3" { takes = "microphone" }
}
microphone "Lectern" {
  into     = "Rack"
  input    = "Mic 1"
  balanced = false
  lead     = "10.1 m" # expect fail warning: unbalanced
}
microphone "Old" {
  into      = "Rack"
  input     = "Mic 3"
  impedance = "10 kohm"
  lead      = "7.97 m" # expect fail warning: 19.97 kHz
}
