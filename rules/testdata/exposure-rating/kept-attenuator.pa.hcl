# The attenuator may hang inside beside the door: a caution, no finding.
amplifier "Rack" { rated_power = "120 W" }
line "Terrace" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Bar" {
    exposure = "IP20"
    loudspeaker "T" {
      tap      = "5 W"
      exposure = "IP55"
      space    = "Terrace"
    }
  }
  attenuator "Gate" {
    exposure = "IP66"
    loudspeaker "G" {
      tap      = "5 W"
      exposure = "IP66"
      space    = "Terrace"
    }
  }
}
space "Terrace" {
  exposure = "IP44" # expect pass: 2 loudspeakers && mind Hang attenuators of "Terrace" that are not IP44 elsewhere, where it is dry: "Bar" (IP20).
}
