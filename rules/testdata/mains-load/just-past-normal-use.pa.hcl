system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
mixer "M 1" { mains_idle = "323 W" }
mixer "M 2" { mains_idle = "323 W" }
mixer "M 3" { mains_idle = "323 W" }
mixer "M 4" { mains_idle = "323 W" }
supply "Rack" {
  feeds   = ["M 1", "M 2", "M 3", "M 4"]
  breaker = "10 A" # expect fail warning: take 8.025 A
}
