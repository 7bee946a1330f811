# Left and right main outputs joined on one lead. One of the desks has an output
# that carries both.
mixer "Desk" {
  model = "typical/sound-mixer-12"
  send "Main left" {
    into      = "Amp"
    input     = "Line in"
    tied_with = ["Main right"] # expect fail error: Main left and Main right of Desk are tied to one lead into Line in of Amp: each drives the low impedance of the other, together they are 75 ohm && Take the output "Mono" of Desk
  }
}
mixer "Old desk" {
  output "Left" { impedance = "600 ohm" }
  send "Left" {
    into      = "Amp"
    input     = "Line in 2"
    summed_by = "Y-lead"
    tied_with = ["Right"] # expect fail error: Left and Right of Old desk are tied to one lead into Line in 2 of Amp: each drives the low impedance of the other. && set the channels of Old desk to the centre
  }
}
mixer "Small desk" {
  send "Stereo out" {
    into      = "Amp"
    input     = "Line in 3"
    channels  = "stereo"
    summed_by = "Y-lead" # expect fail error: Stereo out of Small desk goes to Line in 3 of Amp by a bare Y-lead
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
