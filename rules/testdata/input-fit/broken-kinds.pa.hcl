# Kinds of signal that do not belong together, where no figures are stated that
# gain-range could compare.
amplifier "Rack" {
  input "Mic 1" {
    takes   = "microphone"
    setting = "mic"
  }
  input "Mic 2" {
    takes   = "microphone"
    setting = "line"
  }
  input "Mic 3" {
    takes = "microphone"
    pad   = "-20 dB"
  }
  input "Aux 1" { takes = "line" }
  input "Aux 2" { takes = "line" }
  input "Data" { takes = "paging desk" }
  input "Tel" { takes = "telephone" }
}
mixer "Desk" {
  input "Mic" { takes = "microphone" }
  output "Main" { level = "0 dBV" }
}
mixer "Sub" {
  send "Main" {
    into  = "Desk"
    input = "Mic" # expect fail warning: Main of Sub gives line level, and Mic of Desk is set for a microphone.
  }
}
music "Player" {
  into     = "Rack"
  input    = "Mic 1" # expect fail warning: Player gives line level, and Mic 1 of Rack is set for a microphone: it will distort. && Plug Player into Aux 2 of Rack, which is free and takes line level. && Set Mic 1 of Rack to line where it has such a position, or switch in a pad of 20 to 30 dB
  channels = "mono"
}
microphone "Handheld" {
  into  = "Rack"
  input = "Mic 2" # expect fail warning: Handheld gives microphone level, and Mic 2 of Rack is set for line level: it will hardly be heard. && assumed Handheld gives the level that is usual for its kind && Set Mic 2 of Rack to microphone.
}
microphone "Lectern" {
  into  = "Rack"
  input = "Mic 3" # expect fail warning: Lectern gives microphone level && Switch the pad off.
}
microphone "Gooseneck" {
  into  = "Rack"
  input = "Aux 1" # expect fail warning: Gooseneck gives microphone level, and Aux 1 of Rack is set for line level && Put a microphone pre-amplifier before Aux 1 of Rack.
}
message "Bell" {
  into  = "Rack"
  input = "Data" # expect fail error: Data of Rack is an input for a paging desk: Bell is none.
}
music "Tuner" {
  into     = "Rack"
  input    = "Tel" # expect fail warning: Tuner is no telephone, and Tel of Rack is an input for one. && Plug Tuner into Aux 2 of Rack
  channels = "mono"
}
