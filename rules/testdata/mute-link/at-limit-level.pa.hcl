# Without emergency duty a programme may ask for up to 110 dBA.
system "Hall" { duty = "announcements" }
space "Hall" {
  noise             = "70 dBA"
  programme         = "95 dBA" # expect pass: In Hall speech needs 110 dBA over the programme. && at most 110 dBA
  wanted_over_noise = "15 dB"
}
