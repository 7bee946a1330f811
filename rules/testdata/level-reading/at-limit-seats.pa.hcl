# 3 dB from end to end are 1.5 dB either side; 70 dBA are exactly what is wanted.
space "Hall" {
  listeners = "seated"
  wanted_level = "70 dBA"
}
reading "A" {
  space = "Hall"
  level = "73 dBA"
  signal = "pink noise"
}
reading "B" {
  space = "Hall"
  level = "70 dBA" # expect pass: 1.5 dB either side # expect pass: at least 70 dBA
  signal = "pink noise"
}
