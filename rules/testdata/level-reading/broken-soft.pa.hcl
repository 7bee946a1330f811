# 10 dB over 60 dBA of noise are wanted.
space "Hall" {
  noise             = "60 dBA"
  wanted_over_noise = "10 dB"
}
reading "A" {
  space = "Hall"
  level = "67 dBA" # expect fail warning: 3 dB short && taps of 2 times
  signal = "pink noise"
}
