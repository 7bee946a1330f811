# The terminals mute one input of two, and one source comes in behind them. The
# second link silences what is to speak in an emergency.
system "Baths" { duty = "emergency, announcements and music" }
mixer "Desk" {
  input "Music 1" { takes = "line" }
  input "Music 2" { takes = "line" }
  input "Mute" {
    takes    = "contact"
    mutes    = ["Music 1"]
    mutes_on = "open"
  }
  send "Main" {
    into  = "Amp"
    input = "Line in"
  }
}
amplifier "Amp" {
  input "Line in" { takes = "line" }
  input "Aux" { takes = "line" }
  input "Mic" { takes = "microphone" }
  input "Mute" {
    takes    = "contact"
    mutes    = ["Line in", "Aux", "Mic"]
    mutes_on = "open"
  }
}
line "Pool" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "P" { tap = "6 W" }
}
music "Player" {
  into  = "Desk"
  input = "Music 1"
}
music "Tuner" {
  into  = "Desk"
  input = "Music 2"
}
music "Course" {
  into  = "Amp"
  input = "Aux"
}
microphone "Attendant" {
  into  = "Amp"
  input = "Mic"
}
mute_link "Panel 1" {
  into        = "Desk"
  input       = "Mute"
  contact     = "opens in alarm"
  mutes       = ["Player", "Tuner", "Course"] # expect fail error: Panel 1 does not silence Tuner: Mute of Desk does not mute Music 2; nor Course: the way to Pool does not pass Desk.
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
mute_link "Panel 2" {
  into        = "Amp"
  input       = "Mute"
  contact     = "opens in alarm"
  mutes       = "all" # expect fail warning: The system has emergency duty, and Panel 2 silences all of its announcements.
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
