# Each input of this mixer can be set to mute others and to be muted by others.
# Here one half of a pair is missing each time.
mixer "Mixer" {
  routing = "one programme, all lines"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux 1", "Aux 2", "Aux 3"]
  }
  input "Mic 2" { # set to be heard over nothing
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = []
  }
  input "Aux 1" { takes = "line" }
  input "Aux 2" {
    takes           = "line"
    muted_by_others = false # expect fail error: Lectern does not silence Tuner and Screen: Aux 2 and Aux 3 of Mixer are set not to be muted by others. && remedy (computed) Set Aux 2 and Aux 3 of Mixer to be muted by others.
  }
  input "Aux 3" {
    takes           = "line"
    muted_by_others = false
  }
  send "Out" {
    into  = "Amp"
    input = "In"
  }
}
amplifier "Amp" { rated_power = "120 W" }
line "Room" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "R" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Lectern" {
  into    = "Mixer"
  input   = "Mic 1"
  trigger = "signal"
}
microphone "Roaming" {
  into    = "Mixer"
  input   = "Mic 2" # expect fail error: Roaming does not silence Player, Tuner and Screen: Mic 2 of Mixer does not mute Aux 1, Aux 2 and Aux 3.
  trigger = "signal"
}
music "Player" {
  into     = "Mixer"
  input    = "Aux 1"
  channels = "mono"
}
music "Tuner" {
  into     = "Mixer"
  input    = "Aux 2"
  channels = "mono"
}
music "Screen" {
  into     = "Mixer"
  input    = "Aux 3"
  channels = "mono"
}
