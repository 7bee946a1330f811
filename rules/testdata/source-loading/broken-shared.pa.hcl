# One source straight into three mixers, an output into two amplifiers, and a
# microphone on an input that is too low for it.
mixer "Mixer 1" {
  input "Aux" { impedance = "10 kohm" }
  input "Mic" {
    takes     = "microphone"
    impedance = "600 ohm"
  }
  output "Main" { impedance = "600 ohm" }
  send "Main" {
    into  = "Amp 1"
    input = "In" # expect fail warning: Main of Mixer 1 has 600 ohm and sees 5 kohm at In of Amp 1 and In of Amp 2: 8.33 times its own impedance && 5 kohm / 600 ohm = 8.33
  }
  send "Main" {
    into  = "Amp 2"
    input = "In"
  }
}
mixer "Mixer 2" {
  input "Aux" { impedance = "10 kohm" }
}
mixer "Mixer 3" {
  input "Aux" { impedance = "10 kohm" }
}
amplifier "Amp 1" {
  input "In" { impedance = "10 kohm" }
}
amplifier "Amp 2" {
  input "In" { impedance = "10 kohm" }
}
music "Portable rack" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux" # expect fail warning: Portable rack has 600 ohm and sees 3.333 kohm at Aux of Mixer 1, Aux of Mixer 2 and Aux of Mixer 3: 5.56 times its own impedance, and 1.438 dB is lost && 1 / (1 / 10 kohm + 1 / 10 kohm + 1 / 10 kohm) = 3.333 kohm && at least 10 times its own impedance, 6 kohm && Put a distribution amplifier between && Bring the inputs to 18 kohm or more each
  also {
    into  = "Mixer 2"
    input = "Aux"
  }
  also {
    into  = "Mixer 3"
    input = "Aux"
  }
}
microphone "Lectern" {
  impedance = "200 ohm"
  into      = "Mixer 1"
  input     = "Mic" # expect fail warning: Lectern has 200 ohm and sees 600 ohm at Mic of Mixer 1: 3 times its own impedance && at least 5 times its own impedance, 1 kohm; five times the rated impedance of a microphone, IEC 61938, from memory && Take an input of 1 kohm or more
}
