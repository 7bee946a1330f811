# Two lines of one amplifier fail together; two amplifiers with 9 and 3; and a space on
# one line.
system "Mill" { duty = "emergency" }
amplifier "Rack A" { rated_power = "240 W" }
amplifier "Rack B" { rated_power = "240 W" }
space "Hall" { height = "4 m" } # expect fail warning: All 12 loudspeakers of space "Hall" hang on amplifier "Rack A": when it fails, none is left; its 2 lines fail with it && remedy (computed) Hang 6 more loudspeakers of it, every second one, on a line of another amplifier
space "Foyer" { height = "4 m" } # expect fail warning: When amplifier "Rack A" fails, space "Foyer" keeps 3 of 12 loudspeakers && 9 on amplifier "Rack A" and 3 on amplifier "Rack B" && at least 6 of 12 && Hang 3 more loudspeakers
space "Store" { height = "4 m" } # expect fail warning: All 2 loudspeakers of space "Store" hang on amplifier "Rack B"
space "Ward" { # expect fail warning: All 16 loudspeakers of the 8 spaces "Ward" hang on amplifier "Rack B" && at least 8 of 16
  alike  = 8
  height = "3 m"
}
line "A1" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "A1" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
line "A2" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "A2" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
}
line "F1" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "F1" {
    quantity = 9
    tap      = "6 W"
    space    = "Foyer"
  }
}
line "F2" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "F2" {
    quantity = 3
    tap      = "6 W"
    space    = "Foyer"
  }
}
line "S" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "S" {
    quantity = 2
    tap      = "6 W"
    space    = "Store"
  }
}
line "W" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "W" {
    quantity = 16
    tap      = "6 W"
    space    = "Ward"
  }
}
