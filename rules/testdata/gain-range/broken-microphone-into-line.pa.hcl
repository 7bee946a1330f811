# A microphone in a line input, one behind a pad that is left on, and one that is
# a little short where nothing behind it helps.
amplifier "Rack" {
  rated_power = "120 W"
  input "Line" {
    takes       = "line"
    sensitivity = "-12 dBV"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    pad         = "-20 dB"
  }
  input "Mic 2" {
    takes       = "microphone"
    sensitivity = "-50 dBV"
  }
  input "Mic 3" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
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
microphone "Lectern" {
  into  = "Rack"
  input = "Line" # expect fail error: Lectern lacks 42 dB at Line of Rack && -54 dBV − (-12 dBV) = -42 dB && Put a pre-amplifier of 45 dB or more
  level = "-54 dBV"
}
microphone "Desk" {
  into  = "Rack"
  input = "Mic 1" # expect fail warning: Desk lacks 14 dB && -54 dBV − 20 dB (pad) − (-60 dBV) = -14 dB && Switch the pad of 20 dB off: 6 dB are then in hand
  level = "-54 dBV"
}
microphone "Handheld" {
  into  = "Rack"
  input = "Mic 2" # expect fail warning: Handheld lacks 6 dB && Plug Handheld into Mic 3 of Rack, which is free: 4 dB are in hand there
  level = "-56 dBV"
}
