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
  breaker = "13 A" # expect pass: take 5.079 A && a power factor of 0.95 && set by the criteria
}
criteria {
  limit "mains-load" {
    margin       = "30 %"
    power_factor = 0.95 # supplies with correction
  }
}
