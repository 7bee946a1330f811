system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
amplifier "B" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
amplifier "C" {
  rated_power = "480 W"
  mains_idle  = "80 W"
  mains_full  = "900 W"
}
supply "Rack" {
  feeds   = ["A", "B", "C"]
  breaker = "8 A" # expect fail warning: less than 20 % stays free && at most 6.4 A in normal use (20 % below 8 A), 8 A at rated output
}
