# 700 W into 4 ohm on bell wire.
amplifier "Stage" {
  rated_power = "700 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 0.5 mm2" # expect fail error: carries 12.73 A at full output; its conductors may carry 3 A && 424.4 % && limit at most 6 A (200 % of 3 A); BS 7671 Table 4F3A && one eighth of full power && remedy (proved) Lay 2 x 1 mm2: its conductors may carry 15 A && from a constant-voltage line
  home_run  = "2 m"
  loudspeaker "L" { impedance = "4 ohm" }
}
