# Names that refer to nothing.
amplifier "Rack" {
  output "Zone 1" {
    volts = "100 V"
    never_with = ["Zone 2"]
  }
  input "Mic 1" { mutes = ["Aux1", "Aux 2"] }
  input "Aux 1" {}
}
line "Hall" {
  amplifier     = "rack"
  output        = "Zone 1"
  cable         = "house/4 x 1.5"
  override_from = "Matrix"
  loudspeaker "H" {
    quantity = 4
    model    = "house/ceiling"
    space    = "Hal"
  }
}
line "Annex" {
  amplifier = "Rack"
  output    = "Zone1"
  cable     = "2 x 1.5 mm"
  like      = "Hall 2"
}
microphone "Desk" {
  into  = "Rack"
  input = "mic 1"
  lines = ["Hall", "Annexe"]
}
microphone "Loose" { input = "Mic 1" }
mute_link "Fire panel" {
  into  = "Rack"
  mutes = ["Desks"]
}
space "Hall" { muted_by = "Fire panels" }
reading "First" {
  line   = "Hall"
  at     = "H 5"
  beyond = "Tee"
}
reading "Second" { at = "H 2" }
reading "Third" { at = "Nowhere" }
deviation "cable-loss" { channel = "Main" }
supply "Mains" { feeds = ["Rak"] }
