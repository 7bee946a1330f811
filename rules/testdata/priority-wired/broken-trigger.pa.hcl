# Inputs that react to what the source does not give.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["contact"]
    mutes    = ["Aux"]
  }
  input "Mic 2" {
    takes    = "microphone"
    triggers = []
    mutes    = ["Aux"]
  }
  input "Tel" {
    takes    = "telephone"
    triggers = ["signal"]
    mutes    = "all"
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
microphone "Handheld" {
  into    = "Rack"
  input   = "Mic 1"
  trigger = "signal" # expect fail error: Mic 1 of Rack mutes by a contact, and Handheld gives its signal only
}
microphone "Lectern" {
  into    = "Rack"
  input   = "Mic 2" # expect fail error: nothing makes Mic 2 of Rack mute: it has no trigger
  trigger = "contact"
}
telephone "Page port" {
  into    = "Rack"
  input   = "Tel"
  trigger = "none" # expect fail error: Page port gives neither a contact nor a signal that could make Tel of Rack mute
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
