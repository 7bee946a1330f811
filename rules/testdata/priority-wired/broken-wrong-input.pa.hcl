# The desk is on an input that mutes nothing although the one that does is free,
# and the telephone on one whose list leaves the desk's music out.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 1" {
    takes       = "microphone"
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5
    mutes       = ["Mic 2", "Tel", "Aux 1", "Aux 2"]
  }
  input "Mic 2" {
    takes      = "microphone"
    connectors = ["DIN 5", "XLR 3"]
    triggers   = []
  }
  input "Tel" {
    takes    = "telephone"
    triggers = ["signal"]
    mutes    = ["Aux 1"]
  }
  input "Aux 1" { takes = "line" }
  input "Aux 2" { takes = "line" }
}
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
  input     = "Mic 2" # expect fail error: Desk does not silence Page port, Player and Tuner: Mic 2 of Rack does not mute Tel, Aux 1 and Aux 2. && Plug Desk into Mic 1 of Rack
  connector = "DIN 5"
  trigger   = "contact"
  priority  = 1
}
telephone "Page port" {
  into     = "Rack"
  input    = "Tel" # expect fail error: Page port does not silence Tuner: Tel of Rack does not mute Aux 2. && let Tel of Rack mute Aux 2 too
  trigger  = "signal"
  priority = 2
}
music "Player" {
  into     = "Rack"
  input    = "Aux 1"
  channels = "mono"
}
music "Tuner" {
  into     = "Rack"
  input    = "Aux 2"
  channels = "mono"
}
