# Each of the three lines has a switched output: the one that the desk does not
# name is left alone. On an amplifier that sends any input anywhere the player is
# kept off the road.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 3
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
  routing     = "any input to any output"
  output "Out" {
    quantity = 2
    volts    = "100 V"
  }
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
  output    = "Zone 3"
  loudspeaker "C" { tap = "3 W" }
}
line "Yard" {
  amplifier = "Yard amp"
  output    = "Out 1"
  loudspeaker "D" { tap = "30 W" }
}
line "Road" {
  amplifier = "Yard amp"
  output    = "Out 2"
  loudspeaker "E" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  lines      = ["Hall", "Bar"]
  selectable = true # expect pass: Reception can page each of Hall
}
music "Player" {
  into     = "Yard amp"
  input    = "Aux"
  channels = "mono"
  lines    = ["Yard"] # expect pass: Player reaches Yard
}
