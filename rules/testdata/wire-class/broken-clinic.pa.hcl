# Class 3 outputs: one line in Class 2 cable through a void that carries air, one in
# Class 3 cable that may not lie there either, one in cable that may. The catalogue
# holds what would do.
system "Clinic" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Amp" { # expect pass: 70 V is Class 3
  rated_power  = "120 W"
  wiring_class = "Class 3"
}
cable_model "own/CL2P 16-2" {
  size    = "16 AWG"
  cores   = 2
  marking = "CL2P"
}
cable_model "own/CL3 16-2" {
  size    = "16 AWG"
  cores   = 2
  marking = "CL3"
}
cable_model "own/CL3P 16-2" {
  size    = "16 AWG"
  cores   = 2
  marking = "CL3P/FPLP"
}
space "Exam room" {
  ceiling           = "suspended"
  air_handling_void = true
}
space "Store" {
  ceiling           = "concrete"
  air_handling_void = false
}
line "Exam rooms" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL2P 16-2" # expect fail error: Line "Exam rooms" hangs on a Class 3 output, and its cable "own/CL2P 16-2" is marked CL2P, which serves no more than Class 2 && limit CL3P or CMP && remedy (computed) Lay "own/CL3P 16-2" of the catalogue, which is marked CL3P/FPLP
  loudspeaker "E" {
    tap   = "2 W"
    space = "Exam room"
  }
}
line "Waiting" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL3 16-2" # expect fail error: passes the void above "Exam room", which carries air, and its cable "own/CL3 16-2" is marked CL3, which may not lie there without a metal raceway && remedy (proved) Put it in a metal raceway
  loudspeaker "W" {
    tap   = "2 W"
    space = "Exam room"
  }
}
line "Corridor" { # expect pass: Line "Corridor" is Class 3 and passes the void above "Exam room", which carries air, and its cable is marked for that
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL3P 16-2"
  loudspeaker "C" {
    tap   = "2 W"
    space = "Exam room"
  }
}
line "Store" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL2P 16-2" # expect fail error: serves no more than Class 2 && limit CL3 or CM
  loudspeaker "S" {
    tap   = "2 W"
    space = "Store"
  }
}
