# The page comes to the second amplifier through a link, and there a local
# player comes in by an input that the link's input does not mute. In the first
# amplifier all is well.
amplifier "North amp" {
  rated_power = "240 W"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux"]
  }
  input "Aux" { takes = "line" }
  send "Line out" {
    into  = "South amp"
    input = "Line in"
  }
}
amplifier "South amp" {
  rated_power = "240 W"
  input "Line in" {
    takes    = "line"
    triggers = []
  }
  input "Aux" { takes = "line" }
}
line "North" {
  amplifier = "North amp"
  output    = "100 V"
  loudspeaker "N" {
    quantity = 10
    tap      = "10 W"
  }
}
line "South" {
  amplifier = "South amp"
  output    = "100 V"
  loudspeaker "S" {
    quantity = 10
    tap      = "10 W"
  }
}
microphone "Shift office" { # expect fail error: Shift office does not silence Dock radio: Line in of South amp, which it reaches through a link, does not mute Aux.
  into  = "North amp"
  input = "Mic 1"
}
music "Office player" {
  into     = "North amp"
  input    = "Aux"
  channels = "mono"
}
music "Dock radio" {
  into     = "South amp"
  input    = "Aux"
  channels = "mono"
}
