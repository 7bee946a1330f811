# A desk on an input that understands no keys, and one that shares a zone.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  input "Mic" { takes = "microphone" }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
line "Floor 1" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "20 W" }
}
line "Floor 2" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "20 W" }
}
line "Stairs" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "C" { tap = "20 W" }
}
microphone "Porter" {
  into       = "Rack"
  input      = "Mic" # expect fail error: Porter has keys for lines, and Mic of Rack understands none: it takes the signal of a microphone. && Plug Porter into an input for a paging desk.
  selects    = 8
  selectable = true
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  selects    = 8
  selectable = true # expect fail note: Reception pages Floor 2 and Stairs together
}
