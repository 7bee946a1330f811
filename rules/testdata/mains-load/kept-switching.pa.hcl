# 240 W of 280 W above idle is more than class B can have: one eighth is 20 + 280/8 = 55 W.
system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "240 W"
  mains_idle  = "20 W"
  mains_full  = "300 W"
}
supply "Rack" {
  feeds   = ["A"]
  breaker = "2 A" # expect pass: 55 W / (230 V × 0.7) = 0.3416 A
}
