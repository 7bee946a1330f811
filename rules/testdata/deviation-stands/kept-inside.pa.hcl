# A part covers what stands inside it, and a name differs in case and spaces at
# most. Two deviations may meet the same finding.
amplifier "Rack" {
  channel "A" { rated_power = "60 W" }
  channel "B" { rated_power = "60 W" }
  output "Zone 1" {
    channel = "A"
    volts   = "100 V"
  }
  output "Zone 2" {
    channel = "B"
    volts   = "100 V"
  }
}

line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "Wall side" {
    quantity  = 11
    taps_100V = ["6 W", "3 W"]
    tap       = "5 W"
  }
}

line "Bar" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" {
    quantity = 12
    tap      = "6 W"
  }
}

music "Player" {
  into      = "Rack"
  channels  = "stereo"
  summed_by = "Y-lead"
}

deviation "load-margin" { # expect pass: amplifier "Rack" accepts 2 findings.
  amplifier   = "Rack"
  reason      = "Replaced in phase 2"
  accepted_by = "Client's engineer"
}
deviation "load-margin" { # expect pass: amplifier "Rack", channel "B" accepts 1 finding until 2027-06-30.
  amplifier   = "Rack"
  channel     = "B"
  reason      = "The bar is closed until then"
  accepted_by = "Client's engineer"
  until       = "2027-06-30"
}
deviation "tap-setting" { # expect pass: line "Hall" accepts 1 finding.
  line        = "Hall"
  reason      = "Special transformer"
  accepted_by = "Client's engineer"
}
deviation "tap-setting" { # expect pass: loudspeaker "wall  Side" accepts 1 finding.
  loudspeaker = "wall  Side"
  reason      = "Special transformer"
  accepted_by = "Client's engineer"
}
deviation "mono-sum" { # expect pass: source "Player" accepts 1 finding.
  source      = "Player"
  reason      = "The lead is of the owner"
  accepted_by = "Owner"
}
deviation "polarity" { # expect pass: the job accepts
  reason      = "Marked on the drawings of the electrician"
  accepted_by = "Client's engineer"
}
