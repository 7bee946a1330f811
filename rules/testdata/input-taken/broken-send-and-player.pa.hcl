# A player, a send and a second source share inputs of an amplifier without a
# model; none is free.
mixer "Desk" {
  send "Left" {
    into     = "Amp"
    input    = "Line in"
    channels = "left"
  }
  send "Right" {
    into     = "Amp"
    input    = "Line in" # expect fail error: Player, the send Left of Desk and the send Right of Desk go into Line in of Amp && Amp has no free one of this kind
    channels = "right"
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" { channel = "Main" }
}
music "Player" {
  into  = "Amp"
  input = "Line in"
}
