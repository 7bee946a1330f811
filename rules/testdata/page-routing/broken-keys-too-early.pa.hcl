# The floors part in the amplifier; the desk's keys choose in the mixer.
mixer "Mixer" {
  routing = "one programme, all lines"
  output "Main" { level = "0 dBV" }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
  send "Main" {
    into  = "Rack"
    input = "Line in"
  }
}
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  input "Line in" { takes = "line" }
}
line "Floor 1" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Floor 2" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "30 W" }
}
microphone "Reception" { # expect open: Whether Reception is heard on outputs that somebody has switched off cannot be told. && whether an announcement is heard on switched outputs that are off
  into       = "Mixer"
  input      = "Desk"
  selectable = true # expect fail error: its keys choose in Desk of Mixer, behind which all lines still get the same.
}
