# The 70 V line carries 70.7 V, and the cable is for 70 V.
amplifier "Rack" { rated_power = "120 W" }
cable_model "own/screened" {
  size       = "1 mm2"
  cores      = 2
  insulation = "70 V"
}
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  cable     = "own/screened" # expect fail error: carries 70.71 V && is rated 70 V
  loudspeaker "H" { tap = "6 W" }
}
