# The same cable, one class further.
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
cable_model "own/CL2" {
  size    = "18 AWG"
  cores   = 2
  marking = "CL2"
}
line "A" { # expect pass
  amplifier = "Amp"
  output    = "25 V"
  cable     = "own/CL2"
  loudspeaker "A" { tap = "2 W" }
}
line "B" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL2" # expect fail error: which serves no more than Class 2 && remedy (advice) Lay cable marked CL3 or CM
  loudspeaker "B" { tap = "2 W" }
}
