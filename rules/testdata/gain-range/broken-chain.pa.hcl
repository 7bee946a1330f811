# What is lacking at a send is said there once, not at every source.
mixer "Desk" {
  routing = "one programme, all lines"
  output "Main" {
    level = "-10 dBV"
    pad   = "-6 dB"
  }
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
  }
  send "Main" {
    into  = "Amp"
    input = "Line in" # expect fail warning: Main of Desk lacks 16 dB at Line in of Amp && -10 dBV − 6 dB (level control of the output) − (0 dBV) = -16 dB && put a line amplifier of 16 dB
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" {
    takes       = "line"
    sensitivity = "0 dBV"
  }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Lectern" {
  into  = "Desk"
  input = "Mic" # expect pass: Lectern has 6 dB in hand at Mic of Desk: at rated output its control sits 6 dB below fully up.
  level = "-54 dBV"
}
