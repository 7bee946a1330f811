# Two of three do not say by which input they go in; and of an input that left
# and right share it is not known whether it takes two channels.
mixer "Desk" {
  send "Left" {
    into     = "Amp"
    input    = "Aux"
    channels = "left"
  }
  send "Right" {
    into     = "Amp"
    input    = "Aux" # expect open: Whether Aux of Amp takes left and right, or one plug only, cannot be told. && missing what it does with left and right of input "Aux" of amplifier "Amp"
    channels = "right"
  }
}
amplifier "Amp" { rated_power = "120 W" }
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic" { takes = "microphone" } # expect pass: Mic of Rack has one plug.
  input "Aux" { takes = "line" }
}
microphone "Desk mic" {
  into  = "Rack"
  input = "Mic"
}
music "Player" {
  into = "Rack" # expect open: By which input Player and Tuner go into Rack is not said. && missing input it goes to of music "Player": input = "Aux 1" && missing input it goes to of music "Tuner"
}
music "Tuner" { into = "Rack" }
