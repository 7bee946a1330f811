# Emergency duty, a programme of its own, and no link.
system "Church" { duty = "emergency" }
space "Nave" {
  noise             = "60 dBA"
  programme         = "85 dBA" # expect fail error: In Nave speech needs 95 dBA while the programme is on, and nothing in the design silences it in an emergency. && Have the fire panel silence it && 70 dBA are then enough
  wanted_over_noise = "10 dB"
}
space "Porch" {
  noise     = "60 dBA"
  programme = "85 dBA"
}
