# 3 × (80 + 820·√(1/8)) = 1110 W in normal use, over 230 V and a power factor of 0.7: 6.89 A.
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
  breaker = "6 A" # expect fail error: take 6.893 A at one eighth of rated output and 16.77 A at rated output && trips in normal use && 3 × 369.9 W && Move units that take at least 336.9 W && assumed a power factor of 0.7 && mind Amplifiers draw many times
}
