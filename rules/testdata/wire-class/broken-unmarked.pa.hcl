# The amplifier bears no class: one warning, whatever hangs on it. A cable that may
# not lie in the void is wrong for any class.
system "Cinema" {
  wiring_rules = "US"
  duty         = "music"
}
amplifier "Amp" { # expect fail warning: Nothing says which wiring class Left and Right of amplifier "Amp" are marked for. Unmarked counts as Class 1 && CL2 and CL3 cable may not be used && remedy (advice) Read the class at its loudspeaker terminals
  channel "Left" { rated_power = "1200 W" }
  channel "Right" { rated_power = "1200 W" }
  output "Left" { volts = "70 V" }
  output "Right" { volts = "70 V" }
  output "Spare" {
    channel = "Left"
    volts   = "70 V"
  }
}
space "Hall" { air_handling_void = true }
line "Hall left" {
  amplifier = "Amp"
  output    = "Left"
  cable     = "12/2"
  loudspeaker "L" { tap = "100 W" }
}
line "Hall right" {
  amplifier = "Amp"
  output    = "Right"
  cable     = "typical/14-2 AWG stranded" # expect fail error: passes the void above "Hall", which carries air, and cable "typical/14-2 AWG stranded" is marked CL3: whatever the class of its output
  loudspeaker "R" {
    tap   = "100 W"
    space = "Hall"
  }
}
