# A limit is set and figures are missing.
amplifier "A" { # expect open: with no signal of amplifier "A" && at rated output of amplifier "A" && rated power of amplifier "B"
  rated_power = "240 W"
}
amplifier "B" {
  mains_idle = "20 W"
  mains_full = "200 W"
}
criteria {
  limit "rack-heat" { ventilation = "100 W" }
}
