# Field case 60: a large, reverberant hall with 4 inch loudspeakers of the ceiling
# type mounted high on its walls. A voice without them is clearer: they add
# reverberation and little direct sound. The owner will neither switch them off nor
# replace them. Type and mounting do not match, for each of the two rows; and the
# figures bear the listeners out: speech is loud enough, and in 2.4 s of reverberation
# it is not understood. The gallery, with two in its own low ceiling, is in order.
#
# Figures that the report does not give are invented.
system "Parish hall" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}

amplifier "Rack" {
  rated_power = "120 W"
  high_pass   = "150 Hz"
}

line "Walls" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "15 m"
  loudspeaker "North wall" {
    kind             = "ceiling"
    rated_power      = "6 W"
    sensitivity      = "88 dB"
    coverage         = "130 deg"
    lowest_frequency = "150 Hz"
    quantity         = 6
    tap              = "6 W"
    spacing          = "5 m"
    space            = "Hall"
    position         = ["3 m", "0 m"]
    to               = ["28 m", "0 m"]
    aim              = "90 deg"
    height           = "6 m"
    tilt             = "0 deg" # expect mounting-fit fail note: ceiling type and tilted 0 deg down from level
  }
  loudspeaker "South wall" {
    kind             = "ceiling"
    rated_power      = "6 W"
    sensitivity      = "88 dB"
    coverage         = "130 deg"
    lowest_frequency = "150 Hz"
    quantity         = 6
    tap              = "6 W"
    leg              = "20 m"
    spacing          = "5 m"
    space            = "Hall"
    position         = ["28 m", "18 m"]
    to               = ["3 m", "18 m"]
    height           = "6 m" # expect mounting-fit fail note: hangs at 6 m in "Hall", which is 9 m high
  }
  loudspeaker "Gallery" { # expect mounting-fit pass: nothing says that it hangs elsewhere
    kind             = "ceiling"
    rated_power      = "6 W"
    sensitivity      = "88 dB"
    coverage         = "130 deg"
    lowest_frequency = "150 Hz"
    quantity         = 2
    tap              = "3 W"
    leg              = "12 m"
    spacing          = "5 m"
    space            = "Under the gallery"
    height           = "2.8 m"
  }
}

microphone "Lectern" {
  into      = "Rack"
  stands_in = "Hall"
}

space "Hall" { # expect speech-level pass: reaches
  length            = "32 m"
  width             = "18 m"
  height            = "9 m"
  listeners         = "seated"
  noise             = "45 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "2.4 s" # expect intelligibility fail warning: poor && Bring the reverberation time down
}

space "Under the gallery" {
  length            = "10 m"
  width             = "4 m"
  height            = "2.8 m"
  listeners         = "seated"
  noise             = "45 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "0.9 s"
}
