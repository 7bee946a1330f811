# A relay and nothing in writing; and terminals of which nothing is said.
amplifier "Rack" {
  input "Aux" { takes = "line" }
  input "Fire mute" { takes = "contact" }
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
mute_link "Relay" {} # expect open: What Relay does in alarm is not written down in full. && unit it acts on && what the contact does in alarm && sources it silences && whether silence holds until reset && what brings the sound back && test of the link
mute_link "Second" { # expect open: state of the contact that silences of input "Fire mute" && which inputs it mutes of input "Fire mute"
  into        = "Rack"
  input       = "Fire mute"
  contact     = "opens in alarm"
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
mute_link "Third" { # expect open: input it goes to of mute_link "Third"
  into        = "Rack"
  contact     = "opens in alarm"
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  tested      = "with the panel, at handover"
}
