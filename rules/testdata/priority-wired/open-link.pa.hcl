# The contact of the desk works in the first amplifier. Nothing says whether it
# is wired to the second one too, where a player comes in; nor by which input
# the other one gets there.
amplifier "North amp" {
  rated_power = "240 W"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["contact"]
    mutes    = "all"
  }
  send "Line out" {
    into  = "South amp"
    input = "Line in"
  }
}
amplifier "South amp" {
  rated_power = "240 W"
  input "Line in" {
    takes    = "line"
    triggers = ["contact"]
    mutes    = ["Aux"]
  }
  input "Aux" { takes = "line" }
}
line "South" {
  amplifier = "South amp"
  output    = "100 V"
  loudspeaker "S" {
    quantity = 10
    tap      = "10 W"
  }
}
microphone "Shift office" { # expect open: Whether Shift office silences Dock radio and Forklift radio cannot be told. && missing whether its contact is wired to a later unit too of microphone "Shift office": also { into = "South amp" && missing input it goes to of music "Forklift radio"
  into    = "North amp"
  input   = "Mic 1"
  trigger = "contact"
}
music "Dock radio" {
  into     = "South amp"
  input    = "Aux"
  channels = "mono"
}
music "Forklift radio" {
  into     = "South amp"
  channels = "mono"
}
