# The level wanted rests on a noise of which only two octaves are stated: what is
# taken for the others is said.
space "Hall" {
  height            = "5 m"
  noise             = { "500 Hz" = "60 dB", "1 kHz" = "60 dB" }
  wanted_over_noise = "10 dB"
}
reading "A" {
  space  = "Hall"
  level  = "78 dBA" # expect pass: 77 dBA is wanted && assumed the noise in "Hall" is 60 dB at 125 Hz, 60 dB at 250 Hz, 60 dB at 2 kHz
  signal = "pink noise"
}
