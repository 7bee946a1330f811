# The amplifier has no watts for the softer ones: the louder ones are to come down. And
# a pair that has no taps that would do.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "40 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "North" {
    kind        = "wall"
    rated_power = "10 W"
    taps_100V   = ["10 W", "5 W", "2.5 W"]
    sensitivity = "90 dB"
    tap         = "10 W"
    quantity    = 2
    spacing     = "6 m"
    space       = "Hall"
  }
  loudspeaker "South" {
    kind        = "wall"
    rated_power = "10 W"
    taps_100V   = ["10 W", "5 W", "2.5 W"]
    sensitivity = "90 dB"
    tap         = "2.5 W" # expect fail warning: 6 dB softer than "North" && Set "South" to 10 W (+6.0 dB)
    leg         = "9 m"
    quantity    = 4
    spacing     = "6 m"
    space       = "Hall"
  }
  loudspeaker "Porch" {
    kind        = "horn"
    sensitivity = "104 dB"
    tap         = "1 W" # expect fail warning: 6 dB softer than "Yard" && Choose loudspeakers in place of "Porch" that are 6 dB
    leg         = "9 m"
    space       = "Hall"
  }
  loudspeaker "Yard" {
    kind        = "horn"
    sensitivity = "110 dB"
    tap         = "1 W"
    leg         = "9 m"
    space       = "Hall"
  }
}
space "Hall" { height = "5 m" }
