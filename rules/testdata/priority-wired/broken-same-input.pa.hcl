# Two microphones on one input, and one of them is to silence the other; the
# music has the same priority as the desk.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = []
  }
  input "Aux" {
    takes    = "line"
    triggers = []
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
microphone "Desk" {
  into     = "Rack"
  input    = "Mic 1" # expect fail error: Desk does not silence Lectern: both come in by Mic 1 of Rack, and no input silences itself.
  priority = 1       # expect fail note: Desk and Player have the same priority (1)
}
microphone "Lectern" { # expect pass: No source that stands below Lectern
  into     = "Rack"
  input    = "Mic 1"
  priority = 2
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  priority = 1
}
