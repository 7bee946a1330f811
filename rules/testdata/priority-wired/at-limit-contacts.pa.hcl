# The input needs four contacts and the connector has exactly four.
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
microphone "Desk" { # expect pass: Desk silences Player.
  into      = "Rack"
  input     = "Mic"
  trigger   = "contact"
  connector = "Own 4"
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
