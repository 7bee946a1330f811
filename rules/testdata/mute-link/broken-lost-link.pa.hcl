# A contact that closes in alarm on a push-in plug: one tug disables the mute, and
# the sound comes back by itself. Nobody's life hangs on it, so that these are
# warnings.
amplifier "Rack" {
  input "Aux" { takes = "line" }
  input "Fire mute" {
    takes    = "contact"
    mutes    = ["Aux"]
    mutes_on = "closed"
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
mute_link "Fire panel" {
  into        = "Rack"
  input       = "Fire mute"
  contact     = "closes in alarm" # expect fail warning: Fire panel closes in alarm, and nothing watches the link: one tug at its joint (push-in plug on a mobile rack) disables it unnoticed. && Use a contact that opens in alarm && Have the link watched && Join it in a fixed box with a strain relief && silenced all sources: Player && holds until reset no
  mutes       = "all"
  latching    = false # expect fail warning: Fire panel does not hold: the sound comes back by itself
  restored_by = "panel reset"
  joint       = "push-in plug on a mobile rack"
  monitored   = false
  tested      = "with the panel, at handover"
}
