system "Job" {
  duty  = "announcements"
  mains = "120 V"
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
  breaker = "15 A" # expect fail warning: take 13.21 A
}
