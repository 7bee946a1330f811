# 1 kW into 8 ohm is 89 V.
amplifier "Stage" {
  rated_power = "1000 W"
  output "Left" { lowest_impedance = "8 ohm" }
}
cable_model "own/bell wire" {
  size       = "2.5 mm2"
  cores      = 2
  insulation = "60 V"
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "own/bell wire" # expect fail error: Line "Left" carries 89.44 V && remedy (computed) Lay cable whose insulation is rated 89.44 V or more; 300 V is common
  home_run  = "5 m"
  loudspeaker "L" { impedance = "8 ohm" }
}
