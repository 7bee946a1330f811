# A field report: a rule that the taps may be 80 % of the rating, and a 30 W
# amplifier: four 5 W loudspeakers are fine, five miss it by one watt. That is
# worth a warning, not an error: it is still below the rating. Names are invented.
amplifier "Four" {
  rated_power = "30 W" # expect load-margin pass: share of the rating 66.67 %
}
amplifier "Five" {
  rated_power = "30 W" # expect load-margin fail warning: share of the rating 83.33 % && at most 24 W (20 % below 30 W) && set by the criteria && remedy (computed) Take 1 W off
}
line "Four" {
  amplifier = "Four"
  output    = "70 V"
  loudspeaker "A" {
    quantity = 4
    tap      = "5 W"
  }
}
line "Five" {
  amplifier = "Five"
  output    = "70 V"
  loudspeaker "B" {
    quantity = 5
    tap      = "5 W"
  }
}
criteria {
  limit "load-margin" {
    warning_margin = "20 %"
    note_margin    = "20 %"
  }
}
