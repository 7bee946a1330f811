# The last day was yesterday.
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
  amplifier   = "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
  until       = "2026-11-24" # expect fail warning: amplifier "Rack" ended on 2026-11-24; 1 finding of load-margin counts as before. && day of this run 2026-11-25 && agreed anew with a later date
}
