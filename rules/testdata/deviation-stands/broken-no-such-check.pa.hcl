# A check that is misspelt, and one that is none.
amplifier "Rack" { rated_power = "60 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
  }
}

deviation "load-margn" { # expect fail warning: There is no check "load-margn": this deviation accepts nothing. && Write load-margin if that is meant.
  amplifier   = "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
}
deviation "colour of the rack" { # expect fail warning: There is no check "colour of the rack" && `loudlint checks`
  reason      = "Grey is not to be had"
  accepted_by = "Architect"
}
