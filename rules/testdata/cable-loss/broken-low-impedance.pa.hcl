# 80 m to a pair of loudspeakers of low impedance.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "4 ohm" }
}
line "Garden" {
  amplifier = "Bar"
  output    = "Out"
  cable     = "2 x 1.5 mm2" # expect fail error: takes 34.7 % of the voltage (3.71 dB) && remedy (proved) Use 2 x 10 mm2 && remedy (advice) Feed these loudspeakers from a constant-voltage line
  home_run  = "80 m"
  loudspeaker "G" {
    quantity  = 2
    spacing   = "0 m"
    impedance = "8 ohm"
  }
}
