# A field report: the ceiling loudspeakers of a club house hiss as soon as the
# master of the mixer stands at unity, with nothing playing, and the owner asks
# whether the amplifiers are too small. It is a matter of the order of gains, and
# no figure can be given: neither the levels of the sources and of the mixer nor
# the sensitivities are known. That is what the answer says. Names are invented.
system "Fernhollow golf club" {
  reference = "FH-01"
  duty      = "music"
}
mixer "Mixer" {
  routing = "one programme, all lines"
  master  = "0 dB"
  input "Line 1" {
    takes  = "line"
    stereo = "summed inside"
  }
  send "Main" {
    into  = "Amplifier"
    input = "Line in" # expect gain-range open: How much gain Main of Mixer needs at Amplifier cannot be told && nominal level of output "Main" of mixer "Mixer" && sensitivity of input "Line in" of amplifier "Amplifier"
    lead  = "2 m"
  }
}
amplifier "Amplifier" {
  rated_power = "240 W"
  input "Line in" { takes = "line" }
}
line "Dining room" {
  amplifier = "Amplifier"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker "C" {
    quantity = 24
    tap      = "6 W"
    spacing  = "4 m"
    space    = "Dining room"
  }
}
music "Player" {
  into     = "Mixer"
  input    = "Line 1" # expect gain-range open: How much gain Player needs at Line 1 of Mixer cannot be told. && nominal level of music "Player" && sensitivity of input "Line 1" of mixer "Mixer"
  channels = "stereo"
}
space "Dining room" {
  length = "24 m"
  width  = "16 m"
  height = "3 m"
  noise  = "60 dBA"
}
