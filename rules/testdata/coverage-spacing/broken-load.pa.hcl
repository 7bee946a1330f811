# A run of four in a long office. Six take lower taps, because the amplifier is small.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "32 W" }
line "Office" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "O" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "90 deg"
    tap         = "6 W"
    quantity    = 4 # expect fail note: the floor needs 6 && circle of 4.4 m && Hang 6 of them evenly, 6 × 1, on 3 W
    spacing     = "6 m"
    space       = "Office"
  }
}
space "Office" {
  length        = "24 m"
  width         = "4 m"
  height        = "3.4 m"
  listeners     = "seated"
  noise         = "45 dBA"
  wanted_level  = "62 dBA"
  reverberation = "0.6 s"
}
