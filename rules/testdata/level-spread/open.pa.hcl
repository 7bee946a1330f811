# Two makes, of one the sensitivity is not known.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "A" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    tap         = "6 W"
    space       = "Hall"
  }
  loudspeaker "B" {
    kind  = "ceiling"
    tap   = "6 W"
    leg   = "9 m"
    space = "Hall"
  }
}
space "Hall" { height = "5 m" } # expect open: sensitivity
