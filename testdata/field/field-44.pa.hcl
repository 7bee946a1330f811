# A field report: a conference room divides into three, each part with a mixer
# amplifier of its own, and the visitors' rack feeds all three by leads in
# parallel. With one of the amplifiers switched off the other rooms distort: its
# input, without power, loads what they share. Even with all of them on the three
# inputs together are less than ten times the rack's impedance. Names and figures
# are invented.
system "Wharf House, conference floor" {
  reference = "WH-04"
  duty      = "music"
}
amplifier "East mixer" {
  rated_power = "60 W"
  input "Aux" {
    takes       = "line"
    impedance   = "10 kohm"
    sensitivity = "-20 dBV"
    stereo      = "summed inside"
  }
}
amplifier "Middle mixer" {
  rated_power = "60 W"
  input "Aux" {
    takes       = "line"
    impedance   = "10 kohm"
    sensitivity = "-20 dBV"
    stereo      = "summed inside"
  }
}
amplifier "West mixer" {
  rated_power = "60 W"
  input "Aux" {
    takes       = "line"
    impedance   = "10 kohm"
    sensitivity = "-20 dBV"
    stereo      = "summed inside"
  }
}
line "East" {
  amplifier = "East mixer"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "E" {
    quantity = 8
    tap      = "6 W"
    spacing  = "4 m"
    space    = "East part"
  }
}
line "Middle" {
  like      = "East"
  amplifier = "Middle mixer"
}
line "West" {
  like      = "East"
  amplifier = "West mixer"
}
music "Visitors' rack" {
  into      = "East mixer"
  input     = "Aux" # expect source-loading fail warning: Visitors' rack has 600 ohm and sees 3.333 kohm at Aux of East mixer, Aux of Middle mixer and Aux of West mixer: 5.56 times its own impedance && at least 10 times its own impedance && Put a distribution amplifier between Visitors' rack and the 3 inputs
  channels  = "stereo"
  level     = "-10 dBV"
  impedance = "600 ohm"
  also {
    into  = "Middle mixer"
    input = "Aux"
  }
  also {
    into  = "West mixer"
    input = "Aux"
  }
}
space "East part" {
  alike  = 3
  length = "12 m"
  width  = "9 m"
  height = "3 m"
  noise  = "55 dBA"
}
