# Said to be insulated as mains is; the data sheet says otherwise.
system "Yard" {
  wiring_rules = "UK"
  mains        = "230 V"
  duty         = "announcements"
}
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/bell wire" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "100 V"
}
line "Yard" {
  amplifier   = "Rack"
  output      = "100 V"
  cable       = "own/bell wire"
  shared_with = ["mains"] # expect fail warning: said to be insulated as mains beside it is, and its cable "own/bell wire" is insulated for 100 V against 230 V of mains
  separation  = "equal insulation"
  loudspeaker "Y" { tap = "10 W" }
}
