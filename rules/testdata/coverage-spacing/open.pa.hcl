# No angle; no floor and no height.
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
    kind  = "ceiling"
    tap   = "6 W"
    space = "Hall"
  }
  loudspeaker "B" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    leg         = "9 m"
    space       = "Office"
  }
}
space "Hall" { # expect open: coverage angle
  length = "12 m"
  width  = "8 m"
  height = "3 m"
}
space "Office" {} # expect open: size of the floor && height of the space
