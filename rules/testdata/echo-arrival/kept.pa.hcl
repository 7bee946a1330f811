# Back to back in the middle; and a room that is too small for any echo of its own.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "West" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    space       = "Yard"
    position    = ["29 m", "10 m", "4 m"]
    aim         = "180 deg"
  }
  loudspeaker "East" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    leg         = "2 m"
    space       = "Yard"
    position    = ["31 m", "10 m", "4 m"]
    aim         = "0 deg"
  }
}
line "Room" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "R" {
    tap      = "3 W"
    quantity = 2
    spacing  = "4 m"
    space    = "Room"
  }
}
space "Room" { # expect pass: No way across
  length = "9 m"
  width  = "7 m"
}
space "Yard" { # expect pass: soft enough over 100 %
  length       = "60 m"
  width        = "20 m"
  outdoors     = true
  listeners    = "standing"
  wanted_level = "60 dBA"
}
