# All of the place are turned round, which is the same way round.
system "Job" { polarity = "brown to +, blue to -" } # expect pass
line "A" { # expect pass: All loudspeakers on line "A"
  output = "100 V"
  loudspeaker "A" {
    quantity = 2
    tap      = "6 W"
    polarity = "reversed"
  }
}
