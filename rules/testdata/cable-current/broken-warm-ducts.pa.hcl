# At 20 °C 18 AWG would do; in the ceiling over the ovens it does not.
system "Bakery" { conductor_temperature = "50 C" }
amplifier "Stage" {
  rated_power = "150 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "18/2" # expect fail warning: its conductors may carry 3.464 A && 6 A × 0.5774 = 3.464 A && NEC Table 402.5 && × 0.5774 at 50 °C, NEC Table 310.15(B)(1) && the surroundings are as warm && remedy (proved) Lay 2 x 14 AWG: its conductors may carry 8.66 A
  home_run  = "5 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
