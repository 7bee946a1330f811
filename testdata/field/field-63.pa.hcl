# Field case 63: a ceiling grid on one line, put in by several people who did not mind
# the colours of the conductors: neighbours cancel in their overlap. Which colour
# goes where does not matter, only that it is the same everywhere; one line in the
# design and the cable schedule would have done.
#
# Figures are invented.
system "Open office" { # expect polarity fail note: Nothing says how 24 loudspeakers are to be connected the same way round && cable schedule
  duty = "announcements"
}

amplifier "Rack" {
  rated_power = "240 W"
  high_pass   = "120 Hz"
}

line "Office" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "12 m"
  loudspeaker "O" {
    kind             = "ceiling"
    rated_power      = "6 W"
    lowest_frequency = "120 Hz"
    quantity         = 24
    tap              = "6 W"
    spacing          = "3.6 m"
    space            = "Office"
    height           = "2.7 m"
  }
}

microphone "Reception" { into = "Rack" }

space "Office" {
  length = "29 m"
  width  = "11 m"
  height = "2.7 m"
}
