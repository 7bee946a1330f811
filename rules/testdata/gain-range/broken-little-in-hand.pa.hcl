# Enough for rated output, and no more.
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-56 dBV"
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
microphone "Desk" {
  into  = "Rack"
  input = "Mic" # expect fail note: Desk has only 2 dB in hand at Mic of Rack
  level = "-54 dBV"
}
