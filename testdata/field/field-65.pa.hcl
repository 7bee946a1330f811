# Field case 65: six full-range loudspeakers of 15 W for background music on an
# older line amplifier. The 90 W are 83 % of its 108 W and fit. The guide that came
# with the loudspeakers asks for a high-pass: their transformers begin at 100 Hz,
# and nobody set one. On loud bass the cores saturate, the line is nearly a short,
# and the amplifier's protection trips.
#
# Figures that the report does not give are invented.
system "Cafe" {
  duty     = "music"
  polarity = "brown to terminal 1, everywhere"
}

amplifier "Old line amplifier" { # expect bass-protection fail warning: Music reaches 6 loudspeakers && down to 60 Hz && take 100 Hz
  rated_power      = "108 W"     # expect load-margin pass: 16.7 % in hand
  lowest_frequency = "60 Hz"
}

line "Cafe" {
  amplifier = "Old line amplifier"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "C" {
    quantity         = 6
    kind             = "wall"
    rated_power      = "15 W"
    tap              = "15 W"
    lowest_frequency = "100 Hz"
    spacing          = "6 m"
  }
}

music "Player" {
  into     = "Old line amplifier"
  channels = "mono"
}
