# Where people stand, steps count.
space "Hall" {
  listeners = "standing"
}
reading "A" {
  space = "Hall"
  level = "76 dBA"
  signal = "pink noise"
}
reading "B" {
  space = "Hall"
  level = "71 dBA" # expect fail warning: step by at most 5 dB
  signal = "pink noise"
}
reading "C" {
  space = "Hall"
  level = "69 dBA"
  signal = "pink noise"
}
