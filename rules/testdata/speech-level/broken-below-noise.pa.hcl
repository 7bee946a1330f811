# A plant room at 95 dBA: speech is below the noise.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Plant" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "P" {
    kind        = "horn"
    sensitivity = "100 dB"
    coverage    = "90 deg"
    tap         = "5 W"
    quantity    = 2
    spacing     = "10 m"
    space       = "Plant room"
    height      = "4 m"
    position    = ["0 m", "4 m"]
    to          = ["0 m", "8 m"]
    aim         = "0 deg"
  }
}
space "Plant room" {
  length            = "20 m"
  width             = "12 m"
  height            = "6 m"
  listeners         = "standing"
  noise             = "95 dBA"
  wanted_over_noise = "6 dB" # expect fail error: 11.2 dB short && reaches 89.8 dBA && Choose loudspeakers that are 11.2 dB more sensitive
  reverberation     = "2 s"
}
