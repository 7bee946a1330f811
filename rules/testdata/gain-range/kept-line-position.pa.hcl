# A combined input whose sensitivity is stated for the line position.
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic/line" {
    takes       = "microphone"
    setting     = "line"
    sensitivity = "-20 dBV"
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
music "Player" {
  into     = "Rack"
  input    = "Mic/line" # expect pass: Player has 10 dB in hand
  channels = "mono"
  level    = "-10 dBV"
}
