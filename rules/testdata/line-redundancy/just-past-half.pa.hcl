# One loudspeaker moved: three of eight would be left.
system "Mill" { duty = "emergency" }
amplifier "Rack A" { rated_power = "240 W" }
amplifier "Rack B" { rated_power = "240 W" }
space "Hall" { height = "4 m" } # expect fail warning: When amplifier "Rack A" fails, space "Hall" keeps 3 of 8 loudspeakers && Hang 1 more loudspeaker of it
line "A" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 5
    tap      = "6 W"
    space    = "Hall"
  }
}
line "B" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 3
    tap      = "6 W"
    space    = "Hall"
  }
}
