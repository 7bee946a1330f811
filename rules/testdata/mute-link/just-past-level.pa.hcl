# And no more.
system "Hall" { duty = "announcements" }
space "Hall" {
  noise             = "70 dBA"
  programme         = "95.5 dBA" # expect fail warning: In Hall speech needs 110.5 dBA while the programme is on, and nothing in the design silences it. && 85 dBA are then enough
  wanted_over_noise = "15 dB"
}
