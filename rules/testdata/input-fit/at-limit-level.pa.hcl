# -26 dBV is line level; the same from a pad of 20 dB on.
amplifier "Rack" {
  input "Line" { takes = "line" }
  input "Mic" {
    takes = "microphone"
    pad   = "-20 dB"
  }
}
microphone "Desk with amplifier" {
  into  = "Rack"
  input = "Line" # expect pass: Line of Rack suits Desk with amplifier.
  level = "-26 dBV"
}
music "Player" {
  into  = "Rack"
  input = "Mic" # expect pass: Mic of Rack suits Player.
  level = "-10 dBV"
}
