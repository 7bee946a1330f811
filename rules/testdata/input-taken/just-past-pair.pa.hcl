# The same two leads into an input for one channel.
mixer "Desk" {
  send "Left" {
    into     = "Amp"
    input    = "Aux"
    channels = "left"
  }
  send "Right" {
    into     = "Amp"
    input    = "Aux" # expect fail error: The send Left of Desk and the send Right of Desk go into Aux of Amp: one input takes one plug.
    channels = "right"
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Aux" { channel = "Main" }
}
