# "Yes" is how a data sheet often puts it. It says that phantom power is needed or
# given, not how much: most such pairs work, so that nobody is accused, and the
# volts are asked for where they are lacking. Against an input that gives none it
# is clear all the same, whatever the volts. Both sides saying the same pass as
# before: they are compared as words.
amplifier "Rack" {
  input "Mic 1" {
    takes   = "microphone"
    phantom = "48 V"
  }
  input "Mic 2" {
    takes   = "microphone"
    phantom = "switched"
  }
  input "Mic 3" {
    takes   = "microphone"
    phantom = "none"
  }
  input "Mic 4" {
    takes   = "microphone"
    phantom = "yes"
  }
}
microphone "Lectern" {
  into    = "Rack"
  input   = "Mic 1" # expect open: volts of phantom power it needs of microphone "Lectern": phantom = "48 V"
  phantom = "yes"
}
microphone "Gooseneck" {
  into    = "Rack"
  input   = "Mic 2" # expect open: volts of phantom power it gives of input "Mic 2" of amplifier "Rack": phantom = "48 V"
  phantom = "48 V"
}
microphone "Altar" {
  into    = "Rack"
  input   = "Mic 3" # expect fail error: Altar needs phantom power (yes), and Mic 3 of Rack gives none: it stays silent. && Put the phantom supply that Altar needs into the lead
  phantom = "yes"
}
microphone "Choir" {
  into    = "Rack"
  input   = "Mic 4" # expect pass
  phantom = "yes"
}
