# The nearest design to a bare Y-lead that is in order: the same lead with
# resistors in it.
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" { channel = "Main" }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
music "Player" { # expect pass: resistors sum left and right
  into      = "Amp"
  input     = "Line in"
  channels  = "stereo"
  impedance = "100 ohm"
  summed_by = "resistors"
}
