# Dead enough, and speech is wanted at the level of the noise.
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
    sensitivity = "70 dB"
    coverage    = "120 deg"
    tap         = "3 W"
    quantity    = 8
    spacing     = "6 m"
    space       = "Hall"
  }
}
space "Hall" {
  length            = "24 m"
  width             = "12 m"
  height            = "7 m"
  noise             = "70 dBA"
  wanted_over_noise = "-3 dB"
  reverberation     = "0.8 s" # expect fail warning: index in "Hall" is 0.04 && Raise speech over the noise, or lower the noise
}
