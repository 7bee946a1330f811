line "A" { like = "B" }
line "B" { like = "C" }
line "C" {
  loudspeaker "S" {}
  loudspeaker "S" {} # said once, although A and D have it too
}
line "D" { like = "C" }
line "E" { like = "E" }
line "F" { like = "G" }
space "A" { like = "B" }
space "B" { like = "C" }
space "C" {
  area              = "50 m2"
  wanted_over_noise = "10 dB"
}
space "D" {
  like         = "C"
  wanted_level = "75 dBA"
  length       = "8 m"
}
space "E" {
  wanted_level      = "75 dBA"
  wanted_over_noise = "10 dB"
}
