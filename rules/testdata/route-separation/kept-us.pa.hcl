# US rules: a tray with a dividing wall, 50 mm in the open, and Class 3 beside data.
system "Campus" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Rack" {
  rated_power  = "240 W"
  wiring_class = "Class 3"
}
line "Quad" {
  amplifier   = "Rack"
  output      = "70 V"
  containment = "cable tray"
  shared_with = ["mains"] # expect pass: barrier
  separation  = "barrier"
  loudspeaker "Q" { tap = "10 W" }
}
line "Library" {
  amplifier   = "Rack"
  output      = "70 V"
  containment = "on hooks above the ceiling"
  shared_with = ["mains", "microphone"] # expect pass: 50 mm apart
  separation  = "50 mm apart"
  loudspeaker "L" { tap = "10 W" }
}
line "Gym" {
  amplifier   = "Rack"
  output      = "70 V"
  shared_with = ["data"] # expect pass
  loudspeaker "G" { tap = "10 W" }
}
