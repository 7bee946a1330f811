# 60 W into one loudspeaker rated 30 W; some is lost in the cable.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "8 ohm" }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  loudspeaker "B" {
    impedance   = "8 ohm" # expect fail error: receives 55.48 W && (21.07 V)² / 8 ohm && remedy (computed) Use a loudspeaker rated 55.48 W or more
    rated_power = "30 W"
  }
}
