# Values with a unit, and texts, typed without quotes.
line "North" {
  home_run    = 40 m
  cable       = 2 x 1.5 mm2
  containment = steel pipe
  loudspeaker "N" {
    quantity = 4 pcs
    tap      = 6W
    leg      = 29 ft 6 in
    spacing  = 7,5 m
    height   = -3 m # the sign is another slip, and said too
    space    = Main hall
  }
}
space "Main hall" {
  noise = { 125 Hz = 60 dB, "1 kHz" = 50 dB }
  width = 10 m, length = 20 m
}
