# Deviations from checks that find nothing there: the load was put right, and the
# finding is about the whole run, not about one of it.
amplifier "Rack" { rated_power = "120 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity  = 4
    taps_100V = ["6 W", "3 W"]
    tap       = "4 W"
  }
}

deviation "load-margin" { # expect fail warning: amplifier "Rack" meets nothing: load-margin finds nothing there. && Take the deviation out.
  amplifier   = "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
}
deviation "tap-setting" { # expect fail warning: line "Hall", loudspeaker "H 2" meets nothing && what it finds is about line "Hall", loudspeaker "H" && a run is named as a whole
  line        = "Hall"
  loudspeaker = "H 2"
  reason      = "Special transformer"
  accepted_by = "Client's engineer"
}
