# Whether the input gives phantom power is not stated. Nothing is asked of a plug
# that goes into a unit without an input.
amplifier "Rack" {
  input "Mic 1" { takes = "microphone" }
  input "Mic 2" { takes = "microphone" }
}
microphone "Lectern" {
  into    = "Rack"
  input   = "Mic 1" # expect open: phantom power it gives of input "Mic 1" of amplifier "Rack": phantom = "48 V"
  phantom = "48 V"
}
microphone "Desk" {
  into    = "Rack"
  phantom = "48 V"
}
