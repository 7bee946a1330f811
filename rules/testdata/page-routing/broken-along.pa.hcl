# The desk has a key for each of the two lines it names, and the first output
# feeds the kitchen too: who presses the key for the hall pages the kitchen. The
# player is meant for the yard alone, on an amplifier that gives all lines the same.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
amplifier "Yard amp" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Aux" { takes = "line" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Bar" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "30 W" }
}
line "Kitchen" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "C" { tap = "3 W" }
}
line "Yard" {
  amplifier = "Yard amp"
  output    = "100 V"
  loudspeaker "D" { tap = "30 W" }
}
line "Road" {
  amplifier = "Yard amp"
  output    = "100 V"
  loudspeaker "E" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  lines      = ["Hall", "Bar"] # expect fail warning: Reception is to page Hall and Bar, and Kitchen hears pages that are not meant for it: nothing parts it from them
  selectable = true # expect pass: Reception can page each of Hall
}
music "Player" {
  into     = "Yard amp"
  input    = "Aux"
  channels = "mono"
  lines    = ["Yard"] # expect fail note: Player is meant for Yard, and Road hears it too: nothing parts it from them # expect pass: Player reaches Yard
}
