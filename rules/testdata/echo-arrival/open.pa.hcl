# What is wanted; and where the horns are.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "Y" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    quantity    = 2
    spacing     = "40 m"
    height      = "4 m"
    space       = "Yard"
  }
  loudspeaker "P" {
    kind     = "horn"
    tap      = "15 W"
    leg      = "40 m"
    quantity = 2
    spacing  = "40 m"
    space    = "Park"
  }
}
space "Yard" { # expect open: position of the loudspeaker
  length       = "60 m"
  width        = "20 m"
  outdoors     = true
  wanted_level = "60 dBA"
}
space "Park" { # expect open: level of speech that is wanted
  length   = "60 m"
  width    = "20 m"
  outdoors = true
}
