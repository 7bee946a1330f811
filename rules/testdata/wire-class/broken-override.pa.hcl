# The line's cable may lie in the void; what carries its override may not. On a third conductor it is the line's circuit
# besides, for which Class 2 cable does not do.
system "Clinic" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Amp" { # expect pass: 70 V is Class 3
  rated_power  = "120 W"
  wiring_class = "Class 3"
  relays       = "24 V, 1 A"
}
cable_model "own/CL3P 16-2" {
  size    = "16 AWG"
  cores   = 2
  marking = "CL3P"
}
cable_model "own/CL2P 20-2" {
  size    = "20 AWG"
  cores   = 2
  marking = "CL2P"
}
cable_model "own/CL2 20-2" {
  size    = "20 AWG"
  cores   = 2
  marking = "CL2"
}
space "Exam room" {
  ceiling           = "suspended"
  air_handling_void = true
}
line "Exam rooms" { # expect pass: Line "Exam rooms" is Class 3
  amplifier      = "Amp"
  output         = "70 V"
  cable          = "own/CL3P 16-2"
  override_from  = "Amp"
  override_cable = "own/CL2 20-2" # expect fail error: Line "Exam rooms" passes the void above "Exam room", which carries air, and its override cable "own/CL2 20-2" is marked CL2, which may not lie there without a metal raceway && remedy (computed) Lay "own/CL2P 20-2" of the catalogue && remedy (proved) Put it in a metal raceway
  attenuator "E knob" {
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "E" {
      tap   = "2 W"
      space = "Exam room"
    }
  }
}
line "Waiting" { # expect pass: Line "Waiting" is Class 3
  amplifier      = "Amp"
  output         = "70 V"
  cable          = "own/CL3P 16-2"
  override_from  = "Amp"
  override_cable = "own/CL2P 20-2" # expect fail error: Line "Waiting" hangs on a Class 3 output, and its override cable "own/CL2P 20-2" is marked CL2P, which serves no more than Class 2 && remedy (computed) Lay "own/CL3P 16-2" of the catalogue
  attenuator "W knob" {
    override = "third conductor"
    loudspeaker "W" {
      tap   = "2 W"
      space = "Exam room"
    }
  }
}
line "Corridor" { # expect pass: Line "Corridor" is Class 3 # expect pass: The override cable of line "Corridor" is marked for relays at 24 V and passes the void above "Exam room", which carries air.
  amplifier      = "Amp"
  output         = "70 V"
  cable          = "own/CL3P 16-2"
  override_from  = "Amp"
  override_cable = "own/CL2P 20-2"
  attenuator "C knob" {
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "C" {
      tap   = "2 W"
      space = "Exam room"
    }
  }
}
