# Each has its own; the fire mute and a second contact sit on terminals that take
# no audio.
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic" { takes = "microphone" } # expect pass: Mic of Rack has one plug.
  input "Aux" { takes = "line" } # expect pass: Aux of Rack has one plug.
  input "Mute" { takes = "contact" }
}
microphone "Desk" {
  into  = "Rack"
  input = "Mic"
  also {
    into  = "Rack"
    input = "Mute"
  }
}
microphone "Lectern" {
  also {
    into  = "Rack"
    input = "Mute"
  }
}
music "Player" {
  into  = "Rack"
  input = "Aux"
}
mute_link "Fire panel" {
  into  = "Rack"
  input = "Aux"
}
