# A field report: an electrician finds 70 V wired like a doorbell above the ceiling of a
# shop: open splices, no conduit, cable smaller than 14 AWG, no marking anywhere. What
# a job done right looks like begins with what is not known: the class at the
# amplifier, the marking of the cable, whether the void carries air. Names and figures
# are invented.
system "Corner store" { # expect cable-insulation open: missing insulation voltage of the cable
  duty         = "music"
  wiring_rules = "US"
  units        = "US"
}
amplifier "Back office" { # expect wire-class fail warning: Unmarked counts as Class 1
  rated_power = "100 W"
}
line "Store" {
  amplifier   = "Back office"
  output      = "70 V"
  cable       = "20 AWG"
  containment = "loose above the ceiling tiles"
  shared_with = ["nothing"]
  home_run    = "40 ft"
  loudspeaker "S" {
    kind     = "ceiling"
    quantity = 10
    tap      = "5 W"
    spacing  = "12 ft"
    space    = "Store"
  }
}
line "Stock room" { # the same amplifier, with the class that its plate turned out to bear
  amplifier   = "Stock room"
  output      = "70 V"
  cable       = "20 AWG"
  shared_with = ["nothing"]
  home_run    = "20 ft"
  loudspeaker "T" {
    kind  = "ceiling"
    tap   = "5 W"
    space = "Store"
  }
}
amplifier "Stock room" { # expect wire-class pass: 70 V is Class 3
  rated_power  = "30 W"
  wiring_class = "Class 3"
}
space "Store" {
  ceiling = "tiles on a grid"
  height  = "10 ft"
}
safety {
  line_terminals = "open" # expect safety-notes fail error: terminals stay open
  isolation      = "none" # expect safety-notes fail error: without isolation
  mains_separated = true
  earthed = true
}
