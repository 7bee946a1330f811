# 100 V on cable for 100 V.
amplifier "Rack" { rated_power = "120 W" }
cable_model "own/screened" {
  size       = "1 mm2"
  cores      = 2
  insulation = "100 V"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/screened" # expect pass: carries 100 V && is rated 100 V
  loudspeaker "H" { tap = "6 W" }
}
