# What it takes with no signal is not stated, and even rated output fits.
system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
amplifier "A" {
  rated_power = "240 W"
  mains_full  = "430 W"
}
supply "Rack" {
  feeds   = ["A"]
  breaker = "6 A" # expect pass: take 2.671 A at rated output
}
