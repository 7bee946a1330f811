# A field report: a chain of cinemas whose amplifiers, of 200 to 2500 W, bear no wiring
# class in any data sheet, and a client who refuses conduit. Class follows the tested
# marking, not the watts: unmarked counts as Class 1, and that is wired as power is.
# One warning for each amplifier says so. Names and figures are invented.
system "Cinema six" {
  duty         = "music"
  wiring_rules = "US"
  units        = "US"
}
amplifier "Screen" { # expect wire-class fail warning: Nothing says which wiring class Left and Right of amplifier "Screen" are marked for. Unmarked counts as Class 1: its lines are then wired as power is, mostly in conduit, and CL2 and CL3 cable may not be used && remedy (advice) Read the class at its loudspeaker terminals
  channel "Left" { rated_power = "1250 W" }
  channel "Right" { rated_power = "1250 W" }
  output "Left" { lowest_impedance = "4 ohm" }
  output "Right" { lowest_impedance = "4 ohm" }
}
amplifier "Surround" { rated_power = "200 W" } # expect wire-class fail warning: Nothing says which wiring class 70 V of amplifier "Surround" is marked for
line "Left" {
  amplifier = "Screen"
  output    = "Left"
  cable     = "10/2"
  home_run  = "40 ft"
  loudspeaker "L" { impedance = "8 ohm" }
}
line "Right" {
  amplifier = "Screen"
  output    = "Right"
  cable     = "10/2"
  home_run  = "40 ft"
  loudspeaker "R" { impedance = "8 ohm" }
}
line "Surround" {
  amplifier = "Surround"
  output    = "70 V"
  cable     = "14/2"
  home_run  = "90 ft"
  loudspeaker "S" {
    quantity = 8
    tap      = "15 W"
    spacing  = "12 ft"
  }
}
safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
