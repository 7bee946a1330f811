# Under US rules: the lighting conduit; thicker insulation, which two bidders had
# offered; a cable tray with 50 mm between; and the emergency lighting.
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
  containment = "1 in conduit"
  shared_with = ["mains"] # expect fail error: which US rules do not permit without a barrier (NEC 725.136) && remedy (proved) Give the line a way of its own
  loudspeaker "Q" { tap = "10 W" }
}
line "Library" {
  amplifier   = "Rack"
  output      = "70 V"
  shared_with = ["mains"] # expect fail error: under US rules thicker insulation is not enough && remedy (proved) Put a barrier between them
  separation  = "equal insulation"
  loudspeaker "L" { tap = "10 W" }
}
line "Gym" {
  amplifier   = "Rack"
  output      = "70 V"
  containment = "cable tray"
  shared_with = ["mains"] # expect fail error: said to keep 50 mm from mains cable, and both lie in one cable tray
  separation  = "50 mm apart"
  loudspeaker "G" { tap = "10 W" }
}
line "Stairs" {
  amplifier   = "Rack"
  output      = "70 V"
  shared_with = ["emergency lighting"] # expect fail error: US rules keep independent of all other wiring (NEC 700.10(B))
  separation  = "50 mm apart"
  loudspeaker "S" { tap = "10 W" }
}
