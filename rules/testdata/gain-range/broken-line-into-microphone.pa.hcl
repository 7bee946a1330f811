# A player in an input that is still set for a microphone, and the same where
# nothing but a free line input helps.
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic/line 1" {
    setting     = "mic"
    sensitivity = "-56 dBV"
    impedance   = "2 kohm"
  }
  input "Mic/line 2" {
    takes       = "line"
    sensitivity = "-56 dBV"
  }
  input "Aux" {
    takes       = "line"
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
  input    = "Mic/line 1" # expect fail warning: Player comes to Mic/line 1 of Rack with 46 dB more than rated output needs && -10 dBV − (-56 dBV) = 46 dB && at most 30 dB in hand && Switch in a pad of 20 dB at Mic/line 1 of Rack, or its line position if that is as much: 26 dB are then in hand
  channels = "mono"
  level    = "-10 dBV"
}
message "Chimes" {
  into  = "Rack"
  input = "Mic/line 2" # expect fail warning: with 57.78 dB more && 4 dBu, 1.782 dBV − (-56 dBV) = 57.78 dB && Put a pad of 30 dB before && Plug Chimes into Aux of Rack, which is free: 21.78 dB are in hand there
  level = "+4 dBu"
}
