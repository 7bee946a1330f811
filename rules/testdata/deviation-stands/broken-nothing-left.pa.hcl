# A deviation that ran out and has nothing left to accept.
amplifier "Rack" { rated_power = "120 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 4
    tap      = "6 W"
  }
}

deviation "load-margin" {
  amplifier   = "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
  until       = "2025-01-31" # expect fail warning: ended on 2025-01-31; nothing is found that it could accept. && Take the deviation out.
}
