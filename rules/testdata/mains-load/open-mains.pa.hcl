system "Job" {
  duty = "announcements"
}
amplifier "A" {
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
supply "Rack" { # expect open: missing mains voltage of the job
  feeds   = ["A"]
  breaker = "10 A"
}
supply "Bare" { # expect open: rating of the breaker of supply "Bare"
  feeds = ["A"]
}
supply "Standby" { # a battery: not asked
  feeds    = ["A"]
  capacity = "80 Ah"
}
