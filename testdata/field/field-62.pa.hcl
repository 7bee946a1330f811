# Field case 62: two loudspeakers in a cluster over the stage of a new system. Along
# the centre aisle the meter reads 12 to 15 dB less than beside it, in a strip that is
# 3 ft wide at the stage and 9 ft at the back. Somewhere between the pins of an input
# and the terminals of a loudspeaker a pair of conductors is swapped; swapping one
# again cures it. The design as found says which, and levels 3 dB apart, as the two
# arrive a little off the centre, make the 15 dB.
#
# Figures that the report does not give are invented.
system "Auditorium" { # expect polarity fail note: Nothing says how 2 loudspeakers are to be connected
  duty  = "announcements and music"
  units = "US"
}

amplifier "Cluster amp" {
  channel "Left" { rated_power = "200 W" }
  channel "Right" { rated_power = "200 W" }
  output "Left" {
    channel          = "Left"
    lowest_impedance = "4 ohm"
    rated_into       = "8 ohm"
  }
  output "Right" {
    channel          = "Right"
    lowest_impedance = "4 ohm"
    rated_into       = "8 ohm"
  }
}

line "Left" {
  amplifier = "Cluster amp"
  output    = "Left"
  cable     = "12/2"
  home_run  = "40 ft"
  loudspeaker "Left" {
    kind        = "wall"
    rated_power = "300 W"
    impedance   = "8 ohm"
    space       = "Auditorium"
    polarity    = "normal"
  }
}

line "Right" {
  amplifier = "Cluster amp"
  output    = "Right"
  cable     = "12/2"
  home_run  = "40 ft"
  loudspeaker "Right" {
    kind        = "wall"
    rated_power = "300 W"
    impedance   = "8 ohm"
    space       = "Auditorium"
    polarity    = "reversed" # expect polarity fail error: against 1 loudspeaker in "Auditorium" && -15.3 dB && Swap its two conductors
  }
}

space "Auditorium" {
  length = "90 ft"
  width  = "60 ft"
  height = "24 ft"
}
