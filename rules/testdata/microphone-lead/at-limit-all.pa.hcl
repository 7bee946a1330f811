# 10 m unbalanced, 100 m balanced from an impedance that is not stated, and a
# source of 10 kohm on 7.95 m of lead, which has taken 3 dB at 20 kHz.
amplifier "Rack" {
  input "Mic 1" { takes = "microphone" }
  input "Mic 2" {
    takes    = "microphone"
    balanced = true
  }
  input "Mic 3" { takes = "microphone" }
}
microphone "Lectern" {
  into     = "Rack"
  input    = "Mic 1"
  balanced = false
  lead     = "10 m" # expect pass: 10 m
}
microphone "Gate" {
  into     = "Rack"
  input    = "Mic 2"
  balanced = true
  lead     = "100 m" # expect pass: 100 m
}
microphone "Old" {
  into      = "Rack"
  input     = "Mic 3"
  impedance = "10 kohm"
  lead      = "7.95 m" # expect pass: 20.02 kHz
}
