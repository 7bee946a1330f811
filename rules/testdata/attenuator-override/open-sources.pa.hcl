# The desk is plugged in nowhere yet; the input of the other says nothing of what
# it reacts to.
amplifier "Rack" { rated_power = "120 W" }
amplifier "Annexe amp" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
  input "Mic" { takes = "microphone" }
}
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Office" { # expect open: missing unit it is plugged into of microphone "Desk"
    lowest   = "off"
    override = "none"
    loudspeaker "O" { tap = "6 W" }
  }
}
line "Annexe" { # expect open: Whether Lobby makes Annexe amp switch the override of line "Annexe" cannot be told. && missing what makes it silence others of input "Mic" of amplifier "Annexe amp"
  amplifier     = "Annexe amp"
  output        = "100 V"
  cable         = "4 x 1.5 mm2"
  override_from = "Annexe amp"
  attenuator "Lounge" { # expect pass: lifted
    lowest   = "off"
    override = "24 V relay"
    loudspeaker "L" { tap = "6 W" }
  }
}
microphone "Desk" { lines = ["Rooms"] }
microphone "Lobby" {
  into     = "Annexe amp"
  input    = "Mic"
  priority = 1
}
