# Two lines of the three outputs are named; nobody says what the amplifier can send
# where. On the second one the two named lines are on switched outputs, and of the
# third it is not said.
amplifier "Rack" {
  rated_power = "120 W"
  output "Zone" {
    quantity = 3
    volts    = "100 V"
  }
  input "Aux" { takes = "line" }
}
amplifier "Second" {
  rated_power = "120 W"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  output "Main" { volts = "100 V" }
  output "Rest" { volts = "100 V" }
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
line "A" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "B" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "30 W" }
}
line "C" {
  amplifier = "Rack"
  output    = "Zone 3"
  loudspeaker "C" { tap = "30 W" }
}
line "D" {
  amplifier = "Second"
  output    = "Zone 1"
  loudspeaker "D" { tap = "30 W" }
}
line "E" {
  amplifier = "Second"
  output    = "Main"
  loudspeaker "E" { tap = "30 W" }
}
line "F" {
  amplifier = "Second"
  output    = "Rest"
  loudspeaker "F" { tap = "30 W" }
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  lines    = ["A", "B"] # expect open: Whether Player is kept off the lines that it does not name cannot be told. && routing # expect pass: Player reaches A and B
}
microphone "Desk" {
  into       = "Second"
  input      = "Desk"
  lines      = ["D", "E"] # expect open: Whether Desk is kept off the lines that it does not name cannot be told. && routing
  selectable = true # expect open: Whether Desk can page each of its lines without the others cannot be told. && routing
}
