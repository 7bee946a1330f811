# They are on their highest tap: more of them are needed.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Store" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "S" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W"]
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    spacing     = "6 m"
    space       = "Store"
  }
}
space "Store" {
  length        = "30 m"
  width         = "16 m"
  height        = "5 m"
  listeners     = "standing"
  noise         = "72 dBA"
  wanted_level  = "83 dBA" # expect fail warning: 0.9 dB short && reaches 82.1 dBA && Hang 10 of "S" in place of 8, spread evenly
  reverberation = "1.2 s"
}
