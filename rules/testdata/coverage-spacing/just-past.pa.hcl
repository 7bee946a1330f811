# The ceiling 2 cm lower: circles of 3.96 m, which asks for twice as many.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Room" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "R" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "90 deg"
    tap         = "3 W"
    quantity    = 6 # expect fail note: the floor needs 12 && circle of 3.96 m && Hang 12 of them evenly, 4 × 3
    spacing     = "4 m"
    space       = "Room"
  }
}
space "Room" {
  length    = "12 m"
  width     = "8 m"
  height    = "3.18 m"
  listeners = "seated"
}
