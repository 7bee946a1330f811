# A little less than 3 dB in hand, a little more than 30 dB, a little lacking at a
# send, and controls a little beyond rated output. 20 dB lacking is a warning, a
# little more an error.
amplifier "Rack" {
  rated_power = "120 W"
  master      = "-10 dB"
  output "100 V" {
    channel = "Main"
    volts   = "100 V"
  }
  output "Line out" { level = "-0.1 dBV" }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-56.9 dBV"
  }
  input "Mic 2" {
    takes       = "microphone"
    sensitivity = "-34 dBV"
  }
  input "Mic 3" {
    takes       = "microphone"
    sensitivity = "-33.9 dBV"
  }
  input "Aux 1" {
    takes       = "line"
    sensitivity = "-40.1 dBV"
  }
  input "Aux 2" {
    takes       = "line"
    sensitivity = "-40 dBV"
    trim        = "-19.9 dB" # expect fail warning: 0.1 dB beyond its rated output
  }
  send "Line out" {
    into  = "Second"
    input = "Line in" # expect fail warning: Line out of Rack lacks 0.1 dB
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
microphone "Desk 1" {
  into  = "Rack"
  input = "Mic 1" # expect fail note: Desk 1 has only 2.9 dB in hand
  level = "-54 dBV"
}
microphone "Desk 2" {
  into  = "Rack"
  input = "Mic 2" # expect fail warning: Desk 2 lacks 20 dB
  level = "-54 dBV"
}
microphone "Desk 3" {
  into  = "Rack"
  input = "Mic 3" # expect fail error: Desk 3 lacks 20.1 dB
  level = "-54 dBV"
}
music "Player" {
  into     = "Rack"
  input    = "Aux 1" # expect fail warning: with 30.1 dB more than rated output needs
  channels = "mono"
  level    = "-10 dBV"
}
music "Tuner" {
  into     = "Rack"
  input    = "Aux 2"
  channels = "mono"
  level    = "-10 dBV"
}
