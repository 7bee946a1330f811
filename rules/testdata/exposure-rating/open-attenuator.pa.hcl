# An attenuator may hang inside beside the door. Of one that would stand the
# terrace it does not matter; of the others it is asked.
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
  attenuator "Steps" {
    loudspeaker "S" {
      tap      = "5 W"
      exposure = "IP66"
      space    = "Terrace"
    }
  }
}
space "Terrace" { # expect open: Whether the attenuators of loudspeakers in "Terrace" stand in it too is not stated, and the place needs at least IP44: "Bar" (IP20) and "Steps" (no degree of protection stated). && space that the attenuator stands in && space that the attenuator stands in
  exposure = "IP44" # expect pass: 3 loudspeakers in "Terrace" are at
}
