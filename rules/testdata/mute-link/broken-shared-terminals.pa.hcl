# The first panel hangs on the terminals that the desk's talk contact closes: while somebody talks it can open what it
# likes. The second, which closes in alarm, is on the talk terminals of a microphone input, and there are no others. The
# third is where a message without a contact comes in.
mixer "Matrix" {
  input "Music" { takes = "line" }
  input "Desk" { takes = "line" }
  input "Urgent" {
    takes      = "line"
    triggers   = ["contact", "signal"]
    connectors = ["screw terminals"]
    mutes      = ["Music"]
    mutes_on   = "open"
  }
  input "Mute 1" {
    takes    = "contact"
    mutes    = ["Music"]
    mutes_on = "open"
  }
  input "Mute 2" {
    takes    = "contact"
    mutes    = ["Music"]
    mutes_on = "open"
  }
  send "Main" {
    into  = "Amp"
    input = "Line in"
  }
}
amplifier "Amp" {
  input "Line in" { takes = "line" }
  input "Local music" { takes = "line" }
  input "Local mic" {
    takes      = "microphone"
    triggers   = ["contact"]
    connectors = ["screw terminals"]
    mutes      = ["Local music"]
    mutes_on   = "closed"
  }
}
line "Floor" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "F" { tap = "6 W" }
}
music "Player" {
  into  = "Matrix"
  input = "Music"
}
music "Radio" {
  into  = "Amp"
  input = "Local music"
}
microphone "Reception" {
  into    = "Matrix"
  input   = "Desk"
  trigger = "contact"
  also {
    into  = "Matrix"
    input = "Mute 1"
  }
}
microphone "Bar" {
  into    = "Amp"
  input   = "Local mic"
  trigger = "contact"
}
message "General call" {
  into    = "Matrix"
  input   = "Urgent"
  trigger = "signal"
}
mute_link "First panel" {
  into        = "Matrix"
  input       = "Mute 1" # expect fail error: First panel and the talk contact of Reception are wired to the same terminals, Mute 1 of Matrix: while somebody talks, that contact keeps them closed, and the alarm silences nothing. && remedy (computed) Wire the link to Mute 2 of Matrix, which is free and silences the same.
  contact     = "opens in alarm"
  mutes       = ["Player"]
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
mute_link "Second panel" {
  into        = "Amp"
  input       = "Local mic" # expect fail warning: Second panel and the talk contact of Bar are wired to the same terminals, Local mic of Amp: what the one does && remedy (advice) Give the link a pair of terminals of its own
  contact     = "closes in alarm"
  mutes       = ["Radio"]
  latching    = true
  restored_by = "panel reset"
  monitored   = true
  tested      = "with the panel, at handover"
}
mute_link "Third panel" { # expect pass: Third panel silences Player until reset
  into        = "Matrix"
  input       = "Urgent"
  contact     = "opens in alarm"
  mutes       = ["Player"]
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
