# A tenth of a decibel more.
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
    tap         = "6 W" # expect fail warning: 3.2 dB softer than "B" && Choose loudspeakers in place of "A" that are 3.2 dB
    space       = "Hall"
  }
  loudspeaker "B" {
    kind        = "ceiling"
    sensitivity = "93.2 dB"
    tap         = "6 W"
    leg         = "9 m"
    space       = "Hall"
  }
}
space "Hall" { height = "5 m" }
