# A contact through a plug of which nobody has said how many contacts it has;
# and through one with three, where the input does not say what it needs.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 1" {
    takes       = "microphone"
    connectors  = ["Own 7"]
    triggers    = ["contact"]
    needs_cores = 5
    mutes       = ["Aux"]
  }
  input "Mic 2" {
    takes      = "microphone"
    connectors = ["XLR 3", "DIN 5"]
    triggers   = ["contact"]
    mutes      = ["Aux"]
    mute_depth = "much"
  }
  input "Aux" { takes = "line" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk 1" { # expect open: missing contacts of a connector of connector "Own 7": connector_model "Own 7" { cores = 5 }
  into    = "Rack"
  input   = "Mic 1"
  trigger = "contact"
}
microphone "Desk 2" { # expect open: missing contacts a plug needs for its contact of input "Mic 2" of amplifier "Rack": needs_cores = 5 && mute depth in dB
  into      = "Rack"
  input     = "Mic 2"
  trigger   = "contact"
  connector = "XLR 3"
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
