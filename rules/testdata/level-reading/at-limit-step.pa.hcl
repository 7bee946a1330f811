# 3 dB from one to the next, again and again.
space "Hall" {
  listeners = "standing"
}
reading "A" {
  space = "Hall"
  level = "73 dBA"
  signal = "pink noise"
}
reading "B" {
  space = "Hall"
  level = "70 dBA" # expect pass: at most 3 dB
  signal = "pink noise"
}
reading "C" {
  space = "Hall"
  level = "67 dBA"
  signal = "pink noise"
}
