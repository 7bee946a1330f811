# Field case 60: a large, reverberant hall with 4 inch loudspeakers of the ceiling
# type mounted high on its walls. A voice without them is clearer: they add
# reverberation and little direct sound. The owner will neither switch them off nor
# replace them. What can be said of it here is that type and mounting do not match,
# for each of the two rows; how well speech is understood is a matter of sound.
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
    lowest_frequency = "150 Hz"
    quantity         = 6
    tap              = "6 W"
    spacing          = "5 m"
    space            = "Hall"
    height           = "6 m"
    tilt             = "0 deg" # expect mounting-fit fail note: ceiling type and tilted 0 deg down from level
  }
  loudspeaker "South wall" {
    kind             = "ceiling"
    rated_power      = "6 W"
    lowest_frequency = "150 Hz"
    quantity         = 6
    tap              = "6 W"
    leg              = "20 m"
    spacing          = "5 m"
    space            = "Hall"
    height           = "6 m" # expect mounting-fit fail note: hangs at 6 m in "Hall", which is 9 m high
  }
  loudspeaker "Gallery" { # expect mounting-fit pass: nothing says that it hangs elsewhere
    kind             = "ceiling"
    rated_power      = "6 W"
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

space "Hall" {
  length        = "32 m"
  width         = "18 m"
  height        = "9 m"
  reverberation = "2.4 s"
}

space "Under the gallery" { height = "2.8 m" }
