# One level with nothing to hold it against, one without its space, one without its signal.
space "Hall" {
  height = "5 m"
}
space "Yard" { wanted_level = "70 dBA" }
reading "A" {
  space = "Hall"
  level = "73 dBA" # expect open: missing second level
  signal = "pink noise"
}
reading "B" {
  level = "73 dBA" # expect open: missing space in which
  signal = "pink noise"
}
reading "C" {
  space = "Yard"
  level = "60 dBA" # expect open: missing signal while
}
