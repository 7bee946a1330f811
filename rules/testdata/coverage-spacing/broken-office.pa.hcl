# One loudspeaker for 50 m² under a low ceiling, and nine are needed.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Office" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "O" { # expect fail warning: the floor needs 9 && circle of 3 m && Hang 9 of them evenly, 3 × 3
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "90 deg"
    tap         = "6 W"
    space       = "Office"
  }
}
space "Office" {
  area      = "50 m2"
  height    = "2.7 m"
  listeners = "seated"
}
