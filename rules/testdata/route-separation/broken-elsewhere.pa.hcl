# A yard where everything went into the one duct, under European rules; the next line
# is like it, and in trunking.
system "Yard" {
  wiring_rules = "Europe"
  duty         = "announcements"
}
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier   = "Rack"
  output      = "100 V"
  containment = "conduit"
  shared_with = ["mains", "data", "microphone", "emergency lighting"] # expect fail warning: Line "Yard" shares its containment with mains, and nothing keeps them apart: no barrier && remedy (proved) Give the line a way of its own, away from mains # expect fail warning: carries 100 V, above extra-low voltage, and shares its containment with data cable # expect fail warning: microphone cable, whose signal is thousands of times smaller # expect fail warning: emergency lighting, which is to be kept apart from all other wiring (BS 5266)
  loudspeaker "Y" { tap = "10 W" }
}
line "Gate" { # expect fail warning: Line "Gate" shares its containment with mains && remedy (proved) Put a barrier between them && remedy (proved) Insulate both for the highest voltage # expect fail warning: data # expect fail warning: microphone # expect fail warning: emergency lighting
  like        = "Yard"
  containment = "trunking"
}
line "Mast" {
  amplifier   = "Rack"
  output      = "100 V"
  shared_with = ["microphone"] # expect fail warning: insulation keeps no signal out of it && remedy (proved) Put a barrier
  separation  = "equal insulation"
  loudspeaker "M" { tap = "10 W" }
}
