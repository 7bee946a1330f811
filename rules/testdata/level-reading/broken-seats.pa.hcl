# Seats 6 dB apart.
space "Hall" {
  listeners = "seated"
}
reading "Front" {
  space = "Hall"
  level = "76 dBA"
  signal = "pink noise"
}
reading "Middle" {
  space = "Hall"
  level = "74 dBA"
  signal = "pink noise"
}
reading "Back" {
  space = "Hall"
  level = "70 dBA" # expect fail warning: 3 dB either side && at most 1.5 dB
  signal = "pink noise"
}
