# 4 × 322 W / (230 V × 0.7) = 8 A, 80 % of the breaker.
system "Job" {
  duty  = "announcements"
  mains = "230 V"
}
mixer "M 1" { mains_idle = "322 W" }
mixer "M 2" { mains_idle = "322 W" }
mixer "M 3" { mains_idle = "322 W" }
mixer "M 4" { mains_idle = "322 W" }
supply "Rack" {
  feeds   = ["M 1", "M 2", "M 3", "M 4"]
  breaker = "10 A" # expect pass: 4 × 322 W = 1288 W && takes the same with and without a signal
}
