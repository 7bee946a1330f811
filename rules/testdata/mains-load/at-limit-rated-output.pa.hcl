# 1610 W / (230 V × 0.7) = 10 A.
system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "1000 W"
  mains_idle  = "30 W"
  mains_full  = "1610 W"
}
supply "Rack" {
  feeds   = ["A"]
  breaker = "10 A" # expect pass: and 10 A at rated output, on a breaker of 10 A
}
