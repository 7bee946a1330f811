# A field report: a medical office with a 70 V line, a volume control and a loudspeaker
# in each exam room. The amplifier's output is marked Class 3; the cable above the drop
# ceiling, a void that carries air, is marked CL2P. The asker's worry was boxes and
# bonding; a reader saw that the cable is of the wrong class: Class 2 cable may not
# stand in for Class 3. Boxes are for the authority on site. Names and figures are
# invented.
system "Millbrook clinic" {
  duty         = "announcements and music"
  wiring_rules = "US"
  units        = "US"
}
cable_model "clinic/16-2 plenum" {
  note    = "invented"
  size    = "16 AWG"
  cores   = 2
  marking = "CL2P"
}
amplifier "Closet" { # expect wire-class pass: 70 V is Class 3
  rated_power = "120 W"
  output "70 V" {
    volts        = "70 V"
    wiring_class = "Class 3"
  }
}
line "Exam rooms" {
  amplifier = "Closet"
  output    = "70 V"
  cable     = "clinic/16-2 plenum" # expect wire-class fail error: hangs on a Class 3 output, and its cable "clinic/16-2 plenum" is marked CL2P, which serves no more than Class 2 && limit CL3P or CMP && remedy (advice) Lay cable marked CL3P or CMP
  home_run  = "60 ft"
  attenuator "Room" {
    quantity = 8
    rating   = "10 W"
    spacing  = "18 ft"
    loudspeaker "Exam" {
      kind  = "ceiling"
      tap   = "2 W"
      leg   = "6 ft"
      space = "Exam room"
    }
  }
}
space "Exam room" {
  alike             = 8
  length            = "12 ft"
  width             = "10 ft"
  height            = "9 ft"
  ceiling           = "drop ceiling"
  air_handling_void = true
}
safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
