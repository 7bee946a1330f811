# Interleaved: half each. Of an odd number one line has one more, and a closet has one
# loudspeaker. The wards are filled in walking order, one of each line.
system "Mill" { duty = "emergency" }
amplifier "Rack A" { rated_power = "240 W" }
amplifier "Rack B" { rated_power = "240 W" }
space "Hall" { height = "4 m" } # expect pass: Whichever of them fails, space "Hall" keeps 6 of 12 loudspeakers or more: 6 on amplifier "Rack A" and 6 on amplifier "Rack B"
space "Foyer" { height = "4 m" } # expect pass: keeps 2 of 5 loudspeakers or more: 3 on amplifier "Rack A" and 2 on amplifier "Rack B"
space "Closet" { height = "4 m" } # expect pass: Space "Closet" has one loudspeaker
space "Ward" { # expect pass: the 2 spaces "Ward" keep 2 of 4 loudspeakers or more: 2 on amplifier "Rack A" and 2 on amplifier "Rack B"
  alike  = 2
  height = "3 m"
}
line "HA" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "HA" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
line "HB" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "HB" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
line "FA" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "FA" {
    quantity = 3
    tap      = "6 W"
    space    = "Foyer"
  }
}
line "FB" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "FB" {
    quantity = 2
    tap      = "6 W"
    space    = "Foyer"
  }
}
line "C" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "C" {
    quantity = 1
    tap      = "6 W"
    space    = "Closet"
  }
}
line "WA" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "WA" {
    quantity = 1
    tap      = "6 W"
    space    = "Ward"
  }
}
line "WB" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "WB" {
    quantity = 2
    tap      = "6 W"
    space    = "Ward"
  }
}
line "WC" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "WC" {
    quantity = 1
    tap      = "6 W"
    space    = "Ward"
  }
}
