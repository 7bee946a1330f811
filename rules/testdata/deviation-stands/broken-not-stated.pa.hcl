# Deviations that do not say why, or by whom: they accept nothing.
amplifier "Rack" { rated_power = "60 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
    spacing  = "5 m"
  }
}

deviation "load-margin" { # expect fail warning: amplifier "Rack" has nobody who accepted it, so it accepts nothing; 1 finding of load-margin counts as before && Replaced in phase 2
  amplifier = "Rack"
  reason    = "Replaced in phase 2"
}
deviation "polarity" { accepted_by = "Client's engineer" } # expect fail warning: for the job has no reason
deviation "cable-loss" { # expect fail warning: line "Hall" has no reason and nobody who accepted it && nothing is found that it could accept
  line        = "Hall"
  reason      = ""
  accepted_by = ""
}
