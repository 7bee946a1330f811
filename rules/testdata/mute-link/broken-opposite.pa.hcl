# Terminals that silence on the wrong state, both ways.
amplifier "Rack" {
  input "Aux" { takes = "line" }
  input "Mute 1" {
    takes    = "contact"
    mutes    = ["Aux"]
    mutes_on = "closed"
  }
  input "Mute 2" {
    takes    = "contact"
    mutes    = ["Aux"]
    mutes_on = "open"
  }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "6 W" }
}
music "Player" {
  into  = "Rack"
  input = "Aux"
}
mute_link "Panel 1" {
  into        = "Rack"
  input       = "Mute 1"
  contact     = "opens in alarm" # expect fail error: Panel 1 opens in alarm, and Mute 1 of Rack silences while its terminals are closed: the alarm lets the sound through. && Set Mute 1 of Rack to silence while it is open
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
mute_link "Panel 2" {
  into        = "Rack"
  input       = "Mute 2"
  contact     = "closes in alarm" # expect fail error: Mute 2 of Rack silences while its terminals are open && Use the contact of the panel that opens in alarm.
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  monitored   = true
  tested      = "with the panel, at handover"
}
