# Without a part a deviation is about the job, and never about one of its parts.
amplifier "Rack" { rated_power = "60 W" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 11
    tap      = "6 W"
  }
}

deviation "load-margin" { # expect fail warning: for the job meets nothing && what it finds is about amplifier "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
}
