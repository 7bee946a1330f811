# Nothing to silence: the music has a unit of its own, or plays where no
# announcement is meant to be heard.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic" { takes = "microphone" }
  input "Aux" { takes = "line" }
}
amplifier "Bar amp" {
  rated_power = "60 W"
  input "Aux" { takes = "line" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "F" {
    quantity = 2
    tap      = "6 W"
  }
}
line "Bar" {
  amplifier = "Bar amp"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 4
    tap      = "6 W"
  }
}
microphone "Desk" { # expect pass: No source that stands below Desk is heard on its lines.
  into  = "Rack"
  input = "Mic"
  lines = ["Foyer"]
}
music "Hall player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  lines    = ["Hall"]
}
music "Bar player" {
  into     = "Bar amp"
  input    = "Aux"
  channels = "mono"
}
