system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "240 W"
  mains_full  = "430 W"
}
supply "Rack" { # expect open: with no signal of amplifier "A"
  feeds   = ["A"]
  breaker = "2 A"
}
