# Two new loudspeakers of a higher rating and another make beside four old ones: at
# the same watts they are 6 dB softer. Two taps up cure it.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "60 W" }
line "Practice" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "Old" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W"]
    sensitivity = "93 dB"
    tap         = "3 W"
    quantity    = 4
    spacing     = "3 m"
    space       = "Waiting room"
  }
  loudspeaker "New" {
    kind        = "ceiling"
    rated_power = "20 W"
    taps_100V   = ["12 W", "6 W", "3 W", "1.5 W"]
    sensitivity = "87 dB"
    tap         = "3 W" # expect fail warning: 6 dB softer than "Old" && Set "New" to 12 W (+6.0 dB)
    leg         = "5 m"
    quantity    = 2
    spacing     = "3 m"
    space       = "Waiting room"
  }
}
space "Waiting room" { height = "2.7 m" }
