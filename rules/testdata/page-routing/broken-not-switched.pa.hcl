# Two outputs of the amplifier are switched, the third is not: whatever the desk
# pages, the hall hears it, and it cannot page the bar alone. On the second
# amplifier such an output feeds a line that the desk does not name.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  output "Main" {
    volts    = "100 V"
    switched = false
  }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
amplifier "Second" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  output "Main" {
    volts    = "100 V"
    switched = false
  }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
line "Bar" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Yard" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "30 W" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Main"
  loudspeaker "C" { tap = "30 W" }
}
line "Shop" {
  amplifier = "Second"
  output    = "Zone 1"
  loudspeaker "D" { tap = "30 W" }
}
line "Loft" {
  amplifier = "Second"
  output    = "Zone 2"
  loudspeaker "E" { tap = "30 W" }
}
line "Stairs" {
  amplifier = "Second"
  output    = "Main"
  loudspeaker "F" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  lines      = ["Bar", "Yard", "Hall"]
  selectable = true # expect fail note: Whatever Reception pages, Hall hears it too: nothing on the way there can be closed
}
microphone "Porter" {
  into       = "Second"
  input      = "Desk"
  lines      = ["Shop", "Loft"] # expect fail warning: Porter is to page Shop and Loft, and Stairs hears pages that are not meant for it: nothing parts it from them
  selectable = true # expect pass: Porter can page each of Shop
}
