# One of two is turned round.
system "Job" { polarity = "brown to +, blue to -" } # expect pass
line "A" {
  output = "100 V"
  loudspeaker "A" {
    tap = "6 W"
  }
  loudspeaker "B" {
    tap      = "6 W"
    polarity = "reversed" # expect fail error: against 1 loudspeaker on line "A"
  }
}
