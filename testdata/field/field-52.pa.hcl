# A field report: in a bar the link from the fire panel to the music is of
# fire-rated cable, and ends in a push-fit plug, unclamped, behind a rack on
# wheels. The contact closes in alarm and nothing watches it: one tug disables
# the mute, and nobody notices. A fixed box with a strain relief and a contact
# that opens in alarm, or a watched link, put that right. Names are invented.
system "Bar on the Mole" {
  reference = "BM-04"
  duty      = "music"
}
amplifier "Rack" {
  rated_power = "120 W"
  input "Player" {
    takes  = "line"
    stereo = "summed inside"
  }
  input "Mute" {
    takes    = "contact"
    mutes    = ["Player"]
    mutes_on = "closed"
  }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "8 m"
  loudspeaker "B" {
    quantity = 10
    tap      = "6 W"
    spacing  = "4 m"
    space    = "Bar"
  }
}
music "Player" {
  into     = "Rack"
  input    = "Player"
  channels = "stereo"
}
mute_link "Fire panel" {
  into        = "Rack"
  input       = "Mute"
  contact     = "closes in alarm" # expect mute-link fail warning: Fire panel closes in alarm, and nothing watches the link: one tug at its joint (push-fit plug, unclamped, on a mobile rack) disables it unnoticed. && Use a contact that opens in alarm && Join it in a fixed box with a strain relief
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  joint       = "push-fit plug, unclamped, on a mobile rack"
  monitored   = false
  tested      = "with the panel, at handover"
}
space "Bar" {
  length    = "14 m"
  width     = "9 m"
  height    = "3 m"
  listeners = "standing"
  noise     = "70 dBA"
}
