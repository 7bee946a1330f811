# An even hall, loud enough; another signal is not compared with the first.
space "Hall" {
  wanted_level = "70 dBA"
}
reading "A" {
  space = "Hall"
  level = "71 dBA"
  signal = "pink noise"
}
reading "B" {
  space = "Hall"
  level = "70.5 dBA" # expect pass: 0.25 dB # expect pass: softest level
  signal = "pink noise"
}
reading "Music" {
  space = "Hall"
  level = "85 dBA" # expect pass: softest level measured
  signal = "music"
}
