# Field case 57: the waiting room of a doctor's office. Two new loudspeakers of twice
# the power rating play softer than the four old ones beside them, all simply in
# parallel on one amplifier, and the owner thinks that they need more power. A rating
# is what a loudspeaker can take; how loud it is at the same watts is its sensitivity,
# and the new ones have 6 dB less. On a line with taps, each step is worth 3 dB: two
# steps up make them even, and the amplifier has the watts.
#
# Figures that the report does not give are invented, the 100 V line among them: on
# plain 8 ohm loudspeakers in parallel there is no tap to set.
system "Doctor's office" {
  duty     = "announcements and music"
  polarity = "brown to terminal 1, everywhere"
}

amplifier "Rack" {
  rated_power = "120 W"
  high_pass   = "150 Hz"
}

line "Practice" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "8 m"
  loudspeaker "Old" {
    kind             = "ceiling"
    rated_power      = "6 W"
    taps_100V        = ["6 W", "3 W", "1.5 W"]
    sensitivity      = "92 dB"
    lowest_frequency = "150 Hz"
    tap              = "3 W"
    quantity         = 4
    spacing          = "3 m"
    space            = "Waiting room"
  }
  loudspeaker "New" {
    kind             = "ceiling"
    rated_power      = "20 W"
    taps_100V        = ["20 W", "12 W", "6 W", "3 W"]
    sensitivity      = "86 dB"
    lowest_frequency = "100 Hz"
    tap              = "3 W" # expect level-spread fail warning: "New" are 6 dB softer than "Old" && "New" on 6 W +3.0 dB && "New" on 12 W +6.0 dB && amplifier "Rack" then carries 36 W of 120 W
    leg              = "5 m"
    quantity         = 2
    spacing          = "3 m"
    space            = "Waiting room"
  }
}

space "Waiting room" { height = "2.7 m" }
