# The desk's contact comes through five pins; the message store mutes by its
# signal; equal microphones do not silence each other, which is normal.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 1" {
    takes       = "microphone"
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5
    mutes       = ["Mic 2", "Aux 1", "Aux 2"]
    mute_depth  = "full"
  }
  input "Mic 2" {
    takes      = "microphone"
    connectors = ["XLR 3"]
    triggers   = ["signal"]
    mutes      = ["Aux 1"]
    mute_depth = "-40 dB"
  }
  input "Aux 1" { takes = "line" }
  input "Aux 2" {
    takes    = "line"
    triggers = ["signal"]
    mutes    = ["Aux 1"]
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
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity = 2
    tap      = "10 W"
  }
}
microphone "Desk" { # expect pass: Desk silences Lectern, Class change and Player. && assumed announcements come before music
  into      = "Rack"
  input     = "Mic 1"
  connector = "DIN 5"
  trigger   = "contact"
  priority  = 1
  lines     = "all"
}
microphone "Lectern" { # expect pass: Lectern silences Player.
  into     = "Rack"
  input    = "Mic 2"
  priority = 2
  lines    = ["Hall"]
}
message "Class change" { # expect pass: Class change silences Player. && Aux 2 of Rack turns others off: its mute_depth is not stated
  into     = "Rack"
  input    = "Aux 2"
  trigger  = "signal"
  priority = 2
  lines    = "all"
}
music "Player" {
  into     = "Rack"
  input    = "Aux 1"
  channels = "mono"
  lines    = ["Hall"]
}
