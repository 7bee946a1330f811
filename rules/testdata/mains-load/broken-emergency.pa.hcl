# Alarm tones drive every amplifier at once.
system "Job" {
  duty  = "emergency"
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
  breaker = "10 A" # expect fail warning: a tone that drives all of them fully can trip it && spread the units over more circuits
}
