# A little below is microphone level; a pad of less than 20 dB leaves an input one
# for microphones.
amplifier "Rack" {
  input "Line" { takes = "line" }
  input "Mic" {
    takes = "microphone"
    pad   = "-19 dB"
  }
}
microphone "Desk with amplifier" {
  into  = "Rack"
  input = "Line" # expect fail warning: Desk with amplifier gives microphone level
  level = "-26.1 dBV"
}
music "Player" {
  into  = "Rack"
  input = "Mic" # expect fail warning: Player gives line level
  level = "-10 dBV"
}
