# The same lead without the resistors.
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
music "Player" {
  into      = "Amp"
  input     = "Line in"
  channels  = "stereo"
  impedance = "100 ohm"
  summed_by = "Y-lead" # expect fail error: together they are 50 ohm
}
