# What may stand for what: CM for CL3, CL3 for CL2, power cable for both; CL3 through
# a void that carries air, in a raceway.
system "Office" {
  wiring_rules = "US"
  duty         = "announcements"
}
amplifier "Amp" { # expect pass: 25 V is Class 2 and 70 V is Class 3
  rated_power = "120 W"
  output "25 V" {
    volts        = "25 V"
    wiring_class = "Class 2"
  }
  output "70 V" {
    volts        = "70 V"
    wiring_class = "Class 3"
  }
}
cable_model "own/CM" {
  size    = "18 AWG"
  cores   = 2
  marking = "CM"
}
cable_model "own/CL3R" {
  size    = "18 AWG"
  cores   = 2
  marking = "CL3R"
}
cable_model "own/NM" {
  size    = "14 AWG"
  cores   = 2
  marking = "NM-B"
}
space "Office" { air_handling_void = false }
space "Plant" { air_handling_void = true }
line "A" { # expect pass: Line "A" is Class 3, and its cable is marked for that
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CM"
  loudspeaker "A" {
    tap   = "2 W"
    space = "Office"
  }
}
line "B" { # expect pass: Line "B" is Class 2
  amplifier = "Amp"
  output    = "25 V"
  cable     = "own/CL3R"
  loudspeaker "B" {
    tap   = "2 W"
    space = "Office"
  }
}
line "C" { # expect pass
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/NM"
  loudspeaker "C" {
    tap   = "2 W"
    space = "Office"
  }
}
line "D" { # expect pass: passes the void above "Plant"
  amplifier   = "Amp"
  output      = "70 V"
  cable       = "own/CL3R"
  containment = "EMT conduit"
  loudspeaker "D" {
    tap   = "2 W"
    space = "Plant"
  }
}
