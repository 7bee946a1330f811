# A field report: an electrician asks which clause demands that a house system is
# silenced during an alarm. None does: a clause permits the level to be judged
# against the noise that is left, 10 dB over the reduced average, if the programme
# is silenced. So the level may count on it only where the design silences it, and
# here nothing does. That one amplifier carries the whole room is found besides.
# Names and figures are invented.
system "Assembly rooms" {
  reference = "AR-11"
  duty      = "emergency, announcements and music"
}
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic" { takes = "microphone" }
}
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "15 m"
  loudspeaker "R" {
    quantity = 16
    tap      = "10 W"
    spacing  = "5 m"
    space    = "Ballroom"
  }
}
microphone "Warden" {
  into  = "Rack"
  input = "Mic"
}
space "Ballroom" { # expect line-redundancy fail warning: All 16 loudspeakers of space "Ballroom" hang on amplifier "Rack"
  length            = "26 m"
  width             = "15 m"
  height            = "5 m"
  noise             = "62 dBA"
  programme         = "92 dBA" # expect mute-link fail error: In Ballroom speech needs 102 dBA while the programme is on, and nothing in the design silences it in an emergency. && 62 dBA + 10 dB = 72 dBA && Have the fire panel silence it
  wanted_over_noise = "10 dB"
}
safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  emergency_by    = "a licensed fire-alarm firm, to be named"
  emergency_rules = "those in force there"
}
