# What is wanted, the noise, the reverberation; and in the open, and on a platform with
# a side open, it cannot be worked out.
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
    tap         = "3 W"
    space       = "Hall"
    position    = ["3 m", "3 m", "3 m"]
  }
  loudspeaker "B" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "3 W"
    leg         = "9 m"
    space       = "Foyer"
    position    = ["3 m", "3 m", "3 m"]
  }
  loudspeaker "C" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "3 W"
    leg         = "9 m"
    space       = "Store"
    position    = ["3 m", "3 m", "3 m"]
  }
  loudspeaker "D" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "3 W"
    leg         = "9 m"
    space       = "Yard"
    position    = ["3 m", "3 m", "3 m"]
  }
  loudspeaker "E" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "3 W"
    leg         = "9 m"
    space       = "Platform"
    position    = ["3 m", "3 m", "3 m"]
  }
}
space "Hall" { # expect open: level of speech that is wanted && noise
  length = "6 m"
  width  = "6 m"
  height = "3 m"
}
space "Foyer" { # expect open: noise
  length        = "6 m"
  width         = "6 m"
  height        = "3 m"
  wanted_level  = "60 dBA"
  reverberation = "0.6 s"
}
space "Store" { # expect open: reverberation time
  length            = "6 m"
  width             = "6 m"
  height            = "3 m"
  noise             = "50 dBA"
  wanted_over_noise = "10 dB"
}
space "Yard" { # expect open: measured speech intelligibility (in the open no diffuse field builds up to work it out of)
  length       = "6 m"
  width        = "6 m"
  outdoors     = true
  noise        = "50 dBA"
  wanted_level = "60 dBA"
}
space "Platform" { # expect open: measured speech intelligibility (with a side open no diffuse field builds up to work it out of)
  length       = "6 m"
  width        = "6 m"
  partly_open  = true
  noise        = "50 dBA"
  wanted_level = "60 dBA"
}
