system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "1000 W"
  mains_idle  = "30 W"
  mains_full  = "1620 W"
}
supply "Rack" {
  feeds   = ["A"]
  breaker = "10 A" # expect fail note: a tone that drives all of them fully can trip it
}
