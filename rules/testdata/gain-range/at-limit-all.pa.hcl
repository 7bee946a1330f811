# 3 dB and 30 dB in hand, nothing at a send, and controls that leave exactly
# rated output.
amplifier "Rack" {
  rated_power = "120 W"
  master      = "-10 dB"
  output "100 V" {
    channel = "Main"
    volts   = "100 V"
  }
  output "Line out" { level = "0 dBV" }
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-57 dBV"
  }
  input "Aux" {
    takes       = "line"
    sensitivity = "-40 dBV"
    trim        = "-20 dB"
  }
  send "Line out" {
    into  = "Second"
    input = "Line in" # expect pass: Line out of Rack has 0 dB in hand at Line in of Second: at rated output its control sits fully up.
  }
}
amplifier "Second" {
  rated_power = "120 W"
  input "Line in" {
    takes       = "line"
    sensitivity = "0 dBV"
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
line "Yard" {
  amplifier = "Second"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk" {
  into  = "Rack"
  input = "Mic" # expect pass: Desk has 3 dB in hand
  level = "-54 dBV"
}
music "Player" {
  into     = "Rack"
  input    = "Aux" # expect pass: Player has 30 dB in hand
  channels = "mono"
  level    = "-10 dBV"
}
