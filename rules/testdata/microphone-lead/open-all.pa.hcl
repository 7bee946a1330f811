# Whether a long lead is balanced, by which input it comes in, and the impedance
# of a source at the end of a very long one.
amplifier "Rack" {
  input "Mic 1" { takes = "microphone" }
  input "Mic 2" {
    takes    = "microphone"
    balanced = true
  }
}
microphone "Lectern" {
  into  = "Rack"
  input = "Mic 1"
  lead  = "25 m" # expect open: Whether the lead of Lectern, 25 m long, is balanced cannot be told. && whether it is balanced of microphone "Lectern" && whether it is balanced of input "Mic 1"
}
microphone "Second" {
  into     = "Rack"
  balanced = true
  lead     = "25 m" # expect open: input it goes to of microphone "Second"
}
microphone "Gate" {
  into     = "Rack"
  input    = "Mic 2"
  balanced = true
  lead     = "150 m" # expect open: How much of the treble the lead of Gate takes, 150 m long, cannot be told. && impedance of microphone "Gate"
}
