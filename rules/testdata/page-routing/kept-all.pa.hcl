# A matrix with a desk for every zone; a microphone whose zones are switched by
# hand; one line; sources that promise nothing.
mixer "Matrix" {
  model = "typical/matrix-8x8"
  send "Zone" {
    quantity = 2
    into     = "Amp"
    input    = "Channel"
  }
}
amplifier "Amp" { model = "typical/line-amp-2x240" }
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  input "Mic" { takes = "microphone" }
}
line "Floor 1" {
  amplifier = "Amp"
  output    = "Channel 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Floor 2" {
  amplifier = "Amp"
  output    = "Channel 2"
  loudspeaker "B" { tap = "30 W" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "C" { tap = "30 W" }
}
line "Yard" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "D" { tap = "30 W" }
}
microphone "Reception" {
  model      = "typical/desk-rj45-8"
  into       = "Matrix"
  input      = "Desk"
  lines      = ["Floor 1", "Floor 2"]
  selectable = true # expect pass: Reception can page each of Floor 1 and Floor 2 by itself.
}
microphone "Porter" {
  into       = "Rack"
  input      = "Mic"
  selectable = true # expect pass: Porter can page each of Hall and Yard by itself. && assumed somebody sets the outputs of Rack by hand for each page
}
music "Player" {
  into      = "Matrix"
  input     = "Music 1"
  channels  = "stereo"
  summed_by = "output"
  lines     = ["Floor 1"] # expect pass: Player reaches Floor 1.
}
microphone "Pit" {
  into       = "Rack"
  input      = "Mic"
  lines      = ["Yard"]
  selectable = true # expect pass: Pit has one line to page.
}
message "Chimes" {
  into  = "Matrix"
  input = "Alert"
}
