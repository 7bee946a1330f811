# Left and right leave the mixer apart, and only one of them goes on.
mixer "Desk" {
  input "Stereo" { stereo = "left and right kept" }
  send "Main left" {
    into     = "Amp"
    input    = "Line in"
    channels = "left"
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" { takes = "line" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player" {
  into     = "Desk"
  input    = "Stereo" # expect fail warning: Only the left side of Player reaches Hall, and no line gets the right one.
  channels = "stereo"
}
