# Two keys for two zones.
amplifier "Rack" {
  rated_power = "120 W"
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
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  selects    = 2
  selectable = true # expect pass: Reception can page each of Floor 1 and Floor 2 by itself.
}
