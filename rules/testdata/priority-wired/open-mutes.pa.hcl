# A unit without a model: nobody has said what its inputs silence, nor where the
# second desk goes, nor which of two microphones comes first.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 2" {
    takes    = "microphone"
    triggers = ["contact"]
    mutes    = ["Aux"]
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
microphone "Desk" { # expect open: Whether Desk silences Player cannot be told. && missing which inputs it mutes of input "Mic 1" of amplifier "Rack": input "Mic 1" { mutes = ["Aux"] } # expect open: Which goes first, Desk or Lectern and Spare desk, is not said. && missing priority of microphone "Lectern"
  into     = "Rack"
  input    = "Mic 1"
  priority = 1
}
microphone "Lectern" { # expect open: Whether Lectern silences Player cannot be told. && missing connector at the unit of microphone "Lectern"
  into    = "Rack"
  input   = "Mic 2"
  trigger = "contact"
}
microphone "Spare desk" { # expect open: missing unit it is plugged into of microphone "Spare desk"
  trigger = "contact"
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
