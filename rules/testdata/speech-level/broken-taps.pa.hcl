# Six loudspeakers on 1.5 W in a noisy workshop. Two steps up do it, and the amplifier
# has the watts.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Workshop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "W" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W"]
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "1.5 W"
    quantity    = 6
    spacing     = "5 m"
    space       = "Workshop"
  }
}
space "Workshop" {
  length            = "15 m"
  width             = "10 m"
  height            = "4 m"
  listeners         = "standing"
  noise             = "70 dBA"
  wanted_over_noise = "12 dB" # expect fail warning: 2.5 dB short && reaches 79.5 dBA && Set "W" to 3 W
  reverberation     = "0.8 s"
}
