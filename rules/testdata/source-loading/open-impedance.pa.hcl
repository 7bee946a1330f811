# The impedance of an input, and of a source that two units share.
mixer "Mixer 1" {
  input "Aux 1" { impedance = "10 kohm" }
  input "Aux 2" { takes = "line" }
}
mixer "Mixer 2" {
  input "Aux 1" { impedance = "10 kohm" }
}
music "Player" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux 2" # expect open: impedance of input "Aux 2" of mixer "Mixer 1"
}
music "Shared" {
  into  = "Mixer 1"
  input = "Aux 1" # expect open: Whether Shared can drive Aux 1 of Mixer 1 and Aux 1 of Mixer 2 cannot be told. && impedance of music "Shared"
  also {
    into  = "Mixer 2"
    input = "Aux 1"
  }
}
