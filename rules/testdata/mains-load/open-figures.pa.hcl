system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" { rated_power = "240 W" }
amplifier "B" {
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "110 W" # less than it gives: a figure of normal use
}
mixer "M" {}
supply "Rack" { # expect open: at rated output of amplifier "A" && (what is stated is less than the output itself) of amplifier "B" && with no signal of mixer "M"
  feeds   = ["A", "B", "M"]
  breaker = "10 A"
}
