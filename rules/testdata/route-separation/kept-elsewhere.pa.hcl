# Barriers, distance in the open, insulation that the data sheets prove, and a line of
# low voltage beside data.
system "Offices" {
  wiring_rules = "Australia"
  mains        = "230 V"
  duty         = "announcements"
}
amplifier "Rack" { rated_power = "240 W" }
amplifier "Lobby" {
  rated_power = "50 W"
  output "8 ohm" { lowest_impedance = "8 ohm" }
}
line "North" {
  amplifier   = "Rack"
  output      = "100 V"
  containment = "trunking"
  shared_with = ["mains", "data", "microphone", "emergency lighting", "other lines"] # expect pass: is kept apart: barrier
  separation  = "barrier"
  loudspeaker "N" { tap = "10 W" }
}
line "South" {
  amplifier   = "Rack"
  output      = "100 V"
  containment = "ceiling void"
  shared_with = ["mains", "data", "microphone"] # expect pass: is kept apart: 50 mm apart
  separation  = "50 mm apart"
  loudspeaker "S" { tap = "10 W" }
}
line "East" {
  amplifier   = "Rack"
  output      = "100 V"
  cable       = "typical/2 x 1.5 mm2"
  containment = "trunking"
  shared_with = ["mains"] # expect pass: is kept apart: by the insulation and the class of its cable
  loudspeaker "E" { tap = "10 W" }
}
line "West" {
  amplifier   = "Rack"
  output      = "100 V"
  shared_with = ["nothing"] # expect pass: Nothing that has to be kept apart shares the way of line "West"
  loudspeaker "W" { tap = "10 W" }
}
line "Lobby" {
  amplifier   = "Lobby"
  output      = "8 ohm"
  shared_with = ["data"] # expect pass
  loudspeaker "L" { impedance = "8 ohm" }
}
