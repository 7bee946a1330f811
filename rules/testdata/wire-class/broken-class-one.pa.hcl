# A Class 1 output is wired as power is: no CL3 cable, and single conductors need a
# raceway.
system "Cinema" {
  wiring_rules = "US"
  duty         = "music"
}
amplifier "Amp" { # expect pass: 70 V is Class 1
  rated_power  = "1000 W"
  wiring_class = "Class 1"
}
cable_model "own/CL3 12-2" {
  size    = "12 AWG"
  cores   = 2
  marking = "CL3"
}
cable_model "own/THHN 12" {
  size    = "12 AWG"
  cores   = 2
  marking = "THHN"
}
line "Hall 1" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/CL3 12-2" # expect fail error: hangs on a Class 1 output, which is wired as power is, and its cable "own/CL3 12-2" is marked CL3, for circuits of limited power only && power wiring, such as THHN in conduit or MC
  loudspeaker "H" { tap = "100 W" }
}
line "Hall 2" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "own/THHN 12" # expect fail error: single conductors, which need a raceway, and none is stated
  loudspeaker "I" { tap = "100 W" }
}
