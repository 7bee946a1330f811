# On 8 ohm it may: it depends on where the conductors lie.
amplifier "Stage" {
  rated_power = "200 W"
  output "A" { lowest_impedance = "4 ohm" }
}
line "Loop" {
  amplifier = "Stage"
  output    = "A"
  cable     = "typical/2 x 2.5 mm2" # expect open: missing inductance of the loop that a reverse return makes (it depends on where its conductors lie) of line "Loop"
  home_run  = "50 m"
  ring_leg  = "50 m"
  return    = "reverse"
  loudspeaker "L" {
    quantity  = 2
    impedance = "8 ohm"
    spacing   = "10 m"
  }
}
