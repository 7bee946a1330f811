# Left and right of one mixer into an input for two channels are one use of it.
mixer "Desk" {
  send "Left" {
    into     = "Amp"
    input    = "Aux"
    channels = "left"
  }
  send "Right" {
    into     = "Amp"
    input    = "Aux"
    channels = "right"
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Aux" { stereo = "summed inside" } # expect pass: Aux of Amp has left and right, which are a pair.
}
