# A field report: does a Class 2 line at 70 V above a drop ceiling need conduit? What
# decides is the class marked at the amplifier and whether the void carries air, not
# the voltage alone, and whether it does was not said: the answer is a question.
# Names and figures are invented.
system "Drop ceiling" {
  duty         = "music"
  wiring_rules = "US"
  units        = "US"
}
cable_model "shop/18-2" {
  note    = "invented"
  size    = "18 AWG"
  cores   = 2
  marking = "CL2"
}
amplifier "Shelf" { # expect wire-class pass: 70 V is Class 2
  rated_power  = "60 W"
  wiring_class = "Class 2"
}
line "Shop" { # expect wire-class open: missing whether the void above the ceiling carries air for the building of space "Shop": air_handling_void = false
  amplifier = "Shelf"
  output    = "70 V"
  cable     = "shop/18-2"
  home_run  = "30 ft"
  loudspeaker "S" {
    quantity = 6
    tap      = "4 W"
    spacing  = "15 ft"
    space    = "Shop"
  }
}
space "Shop" {
  length  = "50 ft"
  width   = "30 ft"
  height  = "10 ft"
  ceiling = "drop ceiling"
}
safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
