# Which amplifiers feed the lines is not said.
system "Mill" { duty = "emergency" }
space "Hall" { height = "4 m" } # expect open: missing amplifier that feeds the line of line "A": amplifier = "…" && of line "B"
line "A" {
  loudspeaker "A" {
    quantity = 4
    tap      = "6 W"
    space    = "Hall"
  }
}
line "B" {
  loudspeaker "B" {
    quantity = 4
    tap      = "6 W"
    space    = "Hall"
  }
}
