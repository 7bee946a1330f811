# The last day is today.
amplifier "Rack" { rated_power = "60 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
  }
}

deviation "load-margin" { # expect pass: accepts 1 finding until 2026-11-25.
  amplifier   = "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
  until       = "2026-11-25"
}
