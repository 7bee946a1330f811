# A convention, and nothing that is stated against it.
system "Job" { polarity = "brown to +, blue to -" } # expect pass: The convention is stated
space "Hall" {} # expect pass: No loudspeaker in "Hall" is stated as reversed
line "A" {
  output = "100 V"
  loudspeaker "A" {
    quantity = 6
    tap      = "6 W"
    space    = "Hall"
  }
  loudspeaker "B" {
    tap      = "6 W"
    space    = "Hall"
    polarity = "normal"
  }
}
