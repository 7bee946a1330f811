# 3.2 dB from end to end, and 0.1 dB below what is wanted.
space "Hall" {
  wanted_level = "70 dBA"
}
reading "A" {
  space = "Hall"
  level = "73.1 dBA"
  signal = "pink noise"
}
reading "B" {
  space = "Hall"
  level = "69.9 dBA" # expect fail warning: 1.6 dB either side # expect fail warning: 0.1 dB short
  signal = "pink noise"
}
