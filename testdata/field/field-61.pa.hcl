# Field case 61: a test-and-commissioning form asks for "75 dBA above ambient" and one
# loudspeaker for 50 m² of office. The first mixes a level with a difference: the
# dialect has one attribute for each and refuses dBA in wanted_over_noise; what was
# meant is 75 dBA, or 10 to 15 dB above the noise, and the design says the latter. The
# second does not cover a low ceiling: with 2.7 m, ears at 1.2 m and 90 degrees each
# circle is 3 m wide, and 50 m² need three by three of them. The form's speech
# transmission index of 0.5 is reached all the same: one loudspeaker is loud enough
# for a small, dead room, and only uneven.
#
# Figures that the report does not give are invented.
system "Offices" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}

amplifier "Rack" {
  rated_power = "120 W"
  high_pass   = "150 Hz"
}

line "Offices" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker "Form" { # expect coverage-spacing fail warning: covers a circle of 3 m && the floor needs 9 of them
    kind             = "ceiling"
    rated_power      = "6 W"
    taps_100V        = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity      = "90 dB"
    coverage         = "90 deg"
    lowest_frequency = "150 Hz"
    tap              = "6 W"
    space            = "Office by the form"
  }
  loudspeaker "Even" {
    kind             = "ceiling"
    rated_power      = "6 W"
    taps_100V        = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity      = "90 dB"
    coverage         = "90 deg"
    lowest_frequency = "150 Hz"
    tap              = "0.75 W"
    leg              = "12 m"
    quantity         = 9 # expect coverage-spacing pass: the floor is covered
    spacing          = "3 m"
    space            = "Office as it should be"
  }
}

space "Office by the form" { # expect speech-level pass: reaches
  area              = "50 m2"
  height            = "2.7 m"
  listeners         = "seated"
  noise             = "50 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "0.5 s" # expect intelligibility pass: at least 0.5
}

space "Office as it should be" { # expect speech-level pass: reaches
  area              = "50 m2"
  height            = "2.7 m"
  listeners         = "seated"
  noise             = "50 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "0.5 s" # expect intelligibility pass: at least 0.5
}
