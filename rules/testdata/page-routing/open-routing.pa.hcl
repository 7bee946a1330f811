# What the amplifier can send where, what a desk can choose at its input, and
# whether what one mixer sends another comes back.
amplifier "Rack" {
  rated_power = "120 W"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
amplifier "Second" {
  rated_power = "120 W"
  routing     = "any input to any output"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  input "Desk" { takes = "paging desk" }
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
line "Floor 3" {
  amplifier = "Second"
  output    = "Zone 1"
  loudspeaker "C" { tap = "30 W" }
}
line "Floor 4" {
  amplifier = "Second"
  output    = "Zone 2"
  loudspeaker "D" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  selectable = true # expect open: Whether Reception can page some of its lines without the others cannot be told. && routing of amplifier "Rack"
}
microphone "Porter" {
  into       = "Second"
  input      = "Desk"
  selectable = true # expect open: What Porter can choose at Desk of Second cannot be told. && what a desk on it can choose of input "Desk"
}
mixer "Room A" {
  send "Link" {
    into  = "Room B"
    input = "Link"
  }
}
mixer "Room B" {
  routing = "one programme, all lines"
  send "Link" {
    into  = "Room A"
    input = "Link" # expect open: Whether the signal of Room A and Room B comes back to where it was cannot be told. && routing of mixer "Room A"
  }
}
