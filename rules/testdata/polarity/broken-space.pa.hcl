# Two lines serve the hall, and one loudspeaker there is stated as reversed. The one
# in the porch is reversed too and alone there: it cancels nothing.
system "Job" { polarity = "brown to +, blue to -" } # expect pass: brown to +
space "Hall" {}
space "Porch" {} # expect pass: All loudspeakers in "Porch"
line "A" {
  output = "100 V"
  loudspeaker "A" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
  loudspeaker "Porch" {
    tap      = "6 W"
    space    = "Porch"
    polarity = "reversed"
  }
}
line "B" {
  output = "100 V"
  loudspeaker "B" {
    tap      = "6 W"
    space    = "Hall"
    polarity = "reversed" # expect fail error: Loudspeaker "B" of line "B" is stated as reversed against 6 loudspeakers in "Hall" && -15.3 dB && Swap its two conductors
  }
}
