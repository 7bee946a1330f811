# What the inputs do with two channels, and whether the player has two, is not
# said.
mixer "Desk" {
  input "Stereo" { stereo = "left and right kept" }
  send "Out" {
    into  = "Amp"
    input = "Aux 4"
  }
  send "Rec out" {
    into     = "Amp"
    input    = "Aux 5" # expect open: How left and right of Rec out of Desk become one at Aux 5 of Amp cannot be told. && missing how left and right become one of send "Rec out" of mixer "Desk": summed_by = "resistors"
    channels = "stereo"
  }
}
amplifier "Amp" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player" {
  into     = "Amp"
  input    = "Aux 1" # expect open: How left and right of Player become one at Aux 1 of Amp cannot be told. && missing how left and right become one of music "Player": summed_by = "resistors"
  channels = "stereo"
}
music "Tuner" {
  into      = "Amp"
  input     = "Aux 2"
  channels  = "stereo"
  summed_by = "input" # expect open: missing what it does with left and right of input "Aux 2" of amplifier "Amp": input "Aux 2" { stereo = "summed inside" }
}
music "Radio" { # expect open: Whether left and right of Radio need summing cannot be told. && missing channels of music "Radio": channels = "stereo"
  into  = "Amp"
  input = "Aux 3"
}
music "Screen" { # expect open: Whether left and right of Screen both reach its lines cannot be told. && missing channels it carries of send "Out" of mixer "Desk": channels = "mono"
  into     = "Desk"
  input    = "Stereo"
  channels = "stereo"
}
