# The plug comes with the model of the microphone, so that the remedy is written
# into the microphone. A lead with RJ45 does not go into the input at all.
amplifier "Rack" { model = "typical/mixer-amp-60" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 8
    tap      = "6 W"
  }
}
microphone_model "own/desk" {
  level     = "-54 dBV"
  connector = "RJ45"
  trigger   = "contact"
}
microphone "Desk" {
  model = "own/desk"
  into  = "Rack"
  input = "Mic 1" # expect fail error: an RJ45 plug does not go into it && remedy (computed) Fit a DIN 5 plug
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
