# The same hall with an absorbing ceiling, in octaves.
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
  loudspeaker "H" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W"]
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    spacing     = "6 m"
    space       = "Hall"
  }
}
space "Hall" {
  length            = "24 m"
  width             = "12 m"
  height            = "7 m"
  noise             = "50 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = { "125 Hz" = "1.2 s", "500 Hz" = "1 s", "2 kHz" = "0.8 s", "8 kHz" = "0.5 s" } # expect pass: index in "Hall" is 0.58 && assumed the reverberation time of "Hall" is 1.1 s at 250 Hz, 0.9 s at 1 kHz, 0.65 s
}
