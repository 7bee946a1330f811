# One key for two zones.
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
  selects    = 1
  selectable = true # expect fail error: Reception can choose 1 destination and has 2 to choose from. && at least 2 && Take a desk with 2 keys or more
}
