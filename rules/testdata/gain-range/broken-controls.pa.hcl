# Controls as they are set: one leaves the signal beyond rated output, the other
# below it on purpose.
amplifier "Rack" {
  rated_power = "120 W"
  master      = "-6 dB"
  input "Aux 1" {
    takes       = "line"
    sensitivity = "-20 dBV"
    trim        = "0 dB" # expect fail warning: As set, Player drives Rack 4 dB beyond its rated output && 10 dB + 0 dB (gain control) − 6 dB (master) = 4 dB && Turn the gain control of Aux 1 of Rack down to -4 dB
  }
  input "Aux 2" {
    takes       = "line"
    sensitivity = "-20 dBV"
    trim        = "-20 dB"
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
  input    = "Aux 1"
  channels = "mono"
  level    = "-10 dBV"
}
music "Tuner" {
  into     = "Rack"
  input    = "Aux 2" # expect pass: Tuner has 10 dB in hand
  channels = "mono"
  level    = "-10 dBV"
}
