# No space is named: those of a line count as heard together. Two like lines share
# the block, which is named once a line.
system "Job" { polarity = "brown to +, blue to -" } # expect pass: brown to +
line "A" {
  output = "100 V"
  loudspeaker "A" {
    quantity = 6
    tap      = "6 W"
  }
  loudspeaker "B" {
    quantity = 2
    tap      = "6 W"
    polarity = "reversed" # expect fail error: Each of the 2 loudspeakers "B" of line "A" && 6 loudspeakers on line "A" # expect fail error: of line "Like"
  }
}
line "Like" { like = "A" }
