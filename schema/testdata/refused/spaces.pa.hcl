# Ceilings, layouts and places that contradict themselves.
space "Nave" {
  height  = "9 m"
  heights = [["0 m", "9 m"], ["20 m", "4 m"]]
}
space "Porch" { heights = [["2 m", "3 m"], ["8 m", "0 m"]] }
space "Aisle" { heights = [["0 m", "3 m"], ["8 m", "4 m"], ["8 m", "5 m"]] }
space "Flat" { heights = [["0 m", "3 m"]] }
space "Rows" { layout = "3 x many" }
space "None" { layout = "0 x 4" }
space "Grid" { layout = "rows" }
space "Loud" { noise = { "125 Hz" = "60 dBA" } }
space "Form" { wanted_over_noise = "75 dBA" } # a test form that mixes level and difference
space "Quiet" { noise = "40 dB" }
space "Kept" {
  noise   = { "125 Hz" = "50 dB", "1 kHz" = "42 dB" }
  layout  = "2 x 4"
  heights = [["0 m", "3 m"], ["8 m", "4 m"]]
}
line "Line" {
  loudspeaker "Twice" {
    position = ["2 m", "1 m", "3 m"]
    height   = "3 m"
  }
}
microphone "Lectern" { position = ["1 m"] }
