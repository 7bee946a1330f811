# The mixer's recording output comes back through the second mixer; a matrix may
# have the same, and then it is a matter of how it is set.
mixer "Desk" {
  routing = "one programme, all lines"
  send "Main" {
    into  = "Amp"
    input = "Line in"
  }
  send "Record" {
    into  = "Second"
    input = "Line 1"
  }
}
mixer "Second" {
  routing = "one programme, all lines"
  send "Main" {
    into  = "Desk"
    input = "Line 2" # expect fail warning: The signal of Desk and Second comes back to where it was: it howls or swings up
  }
}
mixer "Matrix" {
  routing = "any input to any output"
  send "Zone 1" {
    into  = "Amp"
    input = "Aux"
  }
  send "Zone 2" {
    into  = "Processor"
    input = "In"
  }
}
mixer "Processor" {
  send "Out" {
    into  = "Matrix"
    input = "Return" # expect fail note: see that Matrix never sends it back there
  }
}
amplifier "Amp" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "A" { tap = "30 W" }
}
