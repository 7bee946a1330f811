# Only the loss of the cable keeps the loudspeaker within its rating: a thicker one is named, not written.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2" # expect fail warning: takes 10.5 % && remedy (computed) Use 2 x 0.75 mm2 for the line: 7.24 % (0.652 dB) is then lost at the worst loudspeaker. Look at the ratings first
  home_run  = "150 m"
  loudspeaker "Horn" {
    tap         = "100 W"
    rated_power = "85 W"
  }
}
