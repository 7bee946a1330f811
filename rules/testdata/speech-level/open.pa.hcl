# Nothing is said of what is wanted; of the noise; of the reverberation where direct
# sound alone does not do; of where a horn looks; of the loudspeakers.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "All" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "A" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 2
    spacing     = "5 m"
    space       = "Hall"
  }
  loudspeaker "B" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    leg         = "9 m"
    space       = "Foyer"
  }
  loudspeaker "C" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "0.75 W"
    leg         = "9 m"
    space       = "Store"
  }
  loudspeaker "D" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "10 W"
    leg         = "9 m"
    height      = "4 m"
    space       = "Yard"
  }
  loudspeaker "E" {
    kind  = "ceiling"
    tap   = "6 W"
    leg   = "9 m"
    space = "Office"
  }
}
space "Hall" { # expect open: level of speech that is wanted
  length = "12 m"
  width  = "8 m"
  height = "3 m"
}
space "Foyer" { # expect open: noise
  length            = "6 m"
  width             = "4 m"
  height            = "3 m"
  wanted_over_noise = "10 dB"
}
space "Store" {
  length       = "12 m"
  width        = "12 m"
  height       = "4 m"
  wanted_level = "74 dBA" # expect open: reverberation time
}
space "Yard" { # expect open: position of the loudspeaker
  length       = "30 m"
  width        = "12 m"
  outdoors     = true
  wanted_level = "75 dBA"
}
space "Office" { # expect open: sensitivity && coverage angle
  length       = "6 m"
  width        = "4 m"
  height       = "3 m"
  wanted_level = "70 dBA"
}
