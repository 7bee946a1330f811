# One input; two that are isolated; two units that one supply feeds; left and
# right as two outputs; a telephone and a summing lead, which are not asked.
mixer "Mixer 1" {
  input "Aux 1" { impedance = "22 kohm" }
  input "Aux 2" {
    impedance = "10 kohm"
    isolated  = true
  }
  input "Aux 3" { impedance = "22 kohm" }
  input "Left" { impedance = "6 kohm" }
  input "Right" { impedance = "6 kohm" }
  input "Line" { impedance = "10 kohm" }
  input "Tel" {
    takes     = "telephone"
    impedance = "600 ohm"
  }
}
mixer "Mixer 2" {
  input "Aux 2" {
    impedance = "20 kohm"
    isolated  = true
  }
  input "Aux 3" { impedance = "22 kohm" }
}
supply "Rack mains" { feeds = ["Mixer 1", "Mixer 2"] }
music "Player" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux 1" # expect pass: Player has 600 ohm and sees 22 kohm at Aux 1 of Mixer 1.
}
music "Isolated" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux 2" # expect pass: Isolated has 600 ohm and sees 6.667 kohm
  also {
    into  = "Mixer 2"
    input = "Aux 2"
  }
}
music "Together" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux 3" # expect pass: Together has 600 ohm and sees 11 kohm
  also {
    into  = "Mixer 2"
    input = "Aux 3"
  }
}
music "Two leads" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Left" # expect pass: Two leads has 600 ohm and sees 6 kohm at Left of Mixer 1.
  channels  = "stereo"
  summed_by = "left only"
  also {
    into      = "Mixer 1"
    input     = "Right"
    summed_by = "right only"
  }
}
music "Tablet" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Line"
  channels  = "stereo"
  summed_by = "resistors"
}
telephone "Page port" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Tel"
}
microphone "Unknown" { into = "Mixer 2" }
