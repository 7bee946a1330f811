# The input needs four contacts and the connector has three.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic" {
    takes       = "microphone"
    connectors  = ["Own 4", "Own 3"]
    triggers    = ["contact"]
    needs_cores = 4
    mutes       = ["Aux"]
    mute_depth  = "full"
  }
  input "Aux" { takes = "line" }
}
connector_model "Own 4" { cores = 4 }
connector_model "Own 3" { cores = 3 }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk" {
  into      = "Rack"
  input     = "Mic"
  trigger   = "contact"
  connector = "Own 3" # expect fail error: Mic of Rack mutes by a contact, and an Own 3 plug has no contacts for it && at least 4 contacts && Fit an Own 4 plug
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
