# From how far somebody talks; and what is wanted.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W"]
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    spacing     = "2 m"
    space       = "Hall"
    position    = ["2 m", "5 m"]
    to          = ["16 m", "5 m"]
  }
}
microphone "Lectern" { # expect open: distance from the talker's mouth to the microphone
  into            = "Rack"
  stands_in       = "Hall"
  position        = ["2 m", "5 m"]
}
space "Hall" {
  length        = "18 m"
  width         = "10 m"
  height        = "4 m"
  listeners     = "seated"
  noise         = "50 dBA"
  wanted_level  = "70 dBA"
  reverberation = "1 s"
}
line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "F" {
    kind  = "ceiling"
    tap   = "3 W"
    space = "Foyer"
  }
}
microphone "Foyer" { # expect open: level of speech that is wanted
  into      = "Rack"
  stands_in = "Foyer"
}
space "Foyer" {
  length = "6 m"
  width  = "5 m"
  height = "3 m"
}
