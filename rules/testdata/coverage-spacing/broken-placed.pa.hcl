# All stand in one half of the room. And background music alone is worth a note.
system "Job" {
  duty     = "announcements and music"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "R" {
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "100 deg"
    tap         = "3 W"
    quantity    = 4 # expect fail warning: some place is 10.07 m && circle of 4.29 m && Hang 5 of them evenly, 5 × 1
    spacing     = "3 m"
    space       = "Room"
    position    = ["1 m", "2 m"]
    to          = ["8 m", "2 m"]
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "S" { # expect fail note: the floor needs 25 && circle of 2.6 m && Spread them evenly over the floor
    kind        = "ceiling"
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W", "1.5 W", "0.75 W"]
    sensitivity = "90 dB"
    coverage    = "90 deg"
    tap         = "3 W"
    space       = "Shop"
  }
}
microphone "Desk" {
  into  = "Rack"
  lines = ["Rooms"]
}
music "Player" {
  into  = "Rack"
  lines = ["Shop"]
}
space "Room" {
  length    = "18 m"
  width     = "4 m"
  height    = "3 m"
  listeners = "seated"
}
space "Shop" {
  length    = "12 m"
  width     = "12 m"
  height    = "2.8 m"
  listeners = "standing"
}
