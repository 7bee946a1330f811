# A grid of 3 × 2 over 12 × 8 m; a run with places in a corridor; wide ones that cover
# everything; and under a ceiling that steps, the lower part decides.
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
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "3 W"
    quantity    = 6 # expect pass: and the floor is covered && circle of 8.31 m
    spacing     = "4 m"
    space       = "Hall"
  }
  loudspeaker "B" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "130 deg"
    tap         = "0.75 W"
    leg         = "9 m"
    quantity    = 4 # expect pass: and the floor is covered && circle of 4.72 m
    spacing     = "4 m"
    space       = "Corridor"
    position    = ["2 m", "1 m"]
    to          = ["14 m", "1 m"]
  }
  loudspeaker "C" { # expect pass: all round
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "180 deg"
    tap         = "1.5 W"
    leg         = "9 m"
    space       = "Store"
  }
  loudspeaker "D" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "90 deg"
    tap         = "3 W"
    leg         = "9 m"
    quantity    = 6 # expect pass: and the floor is covered && circle of 3 m
    spacing     = "3 m"
    space       = "Foyer"
  }
}
space "Hall" {
  length = "12 m"
  width  = "8 m"
  height = "3.6 m"
}
space "Corridor" {
  length    = "16 m"
  width     = "2 m"
  height    = "2.6 m"
  listeners = "standing"
}
space "Store" {
  length = "10 m"
  width  = "10 m"
  height = "3 m"
}
space "Foyer" {
  length    = "9 m"
  width     = "6 m"
  heights   = [["0 m", "3 m"], ["4 m", "5 m"]]
  listeners = "standing"
}
