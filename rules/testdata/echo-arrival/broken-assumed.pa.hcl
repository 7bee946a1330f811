# Ceiling loudspeakers far apart in a long store: assumed places make it a note.
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
  loudspeaker "S" { # expect fail note: comes 52 ms after && 89 % of "Store" hears && Let "S 1" be 5.9 dB softer there
    kind        = "ceiling"
    sensitivity = "95 dB"
    coverage    = "150 deg"
    tap         = "6 W"
    quantity    = 3
    spacing     = "40 m"
    space       = "Store"
  }
}
space "Store" {
  length       = "120 m"
  width        = "10 m"
  height       = "12 m"
  wanted_level = "60 dBA"
}
criteria {
  limit "echo-arrival" {
    within = "14 dB"
    share  = "2 %"
  }
}
