# High enough while all have power; one of them off may load the others.
mixer "Mixer 1" {
  input "Aux" { impedance = "30 kohm" }
}
mixer "Mixer 2" {
  input "Aux" { impedance = "30 kohm" }
}
music "Portable rack" {
  impedance = "600 ohm"
  into      = "Mixer 1"
  input     = "Aux" # expect fail note: Portable rack goes straight into Mixer 1 and Mixer 2: with one of them switched off its input may load the others' signal. && times its own impedance 25 && Put a distribution amplifier or transformers between them && supply "Rack mains" { feeds = ["Mixer 1", "Mixer 2"] }
  also {
    into  = "Mixer 2"
    input = "Aux"
  }
}
