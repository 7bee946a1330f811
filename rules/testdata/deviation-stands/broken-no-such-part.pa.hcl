# Deviations that outlived the parts they were agreed for, or misspell them.
amplifier "Rack" { rated_power = "60 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
  }
}

deviation "load-margin" {
  amplifier   = "Rak" # expect fail warning: There is no amplifier "Rak": this deviation from load-margin accepts nothing. && Write "Rack" if that is meant.
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
}
deviation "cable-loss" {
  line        = "Slipway" # expect fail warning: There is no line "Slipway" && Take the deviation out.
  reason      = "The old cable stays"
  accepted_by = "Client's engineer"
}
deviation "mute-link" {
  mute_link = "Panel" # expect fail warning: There is no mute link "Panel"
}
