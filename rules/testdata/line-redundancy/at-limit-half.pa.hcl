# Exactly half is left of an even number.
system "Mill" { duty = "emergency" }
amplifier "Rack A" { rated_power = "240 W" }
amplifier "Rack B" { rated_power = "240 W" }
space "Hall" { height = "4 m" } # expect pass: 4 on amplifier "Rack A" and 4 on amplifier "Rack B"
line "A" {
  amplifier = "Rack A"
  output    = "100 V"
  loudspeaker "A" {
    quantity = 4
    tap      = "6 W"
    space    = "Hall"
  }
}
line "B" {
  amplifier = "Rack B"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 4
    tap      = "6 W"
    space    = "Hall"
  }
}
