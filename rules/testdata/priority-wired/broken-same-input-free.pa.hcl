# Desk and lectern share an input; the one that silences it is free.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Mic 2", "Aux"]
  }
  input "Mic 2" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux"]
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
microphone "Lectern" { # expect pass: Lectern silences Player.
  into     = "Rack"
  input    = "Mic 2"
  priority = 2
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic 2" # expect fail error: both come in by Mic 2 of Rack && Plug Desk into Mic 1 of Rack
  priority = 1
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
