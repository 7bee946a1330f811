# 300 W at 100 V are 3 A; the data sheet says 3 A, and no leg takes anything off.
amplifier "Rack" { rated_power = "500 W" }
cable_model "own/thin" {
  size    = "0.5 mm2"
  cores   = 2
  current = "3 A"
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/thin" # expect pass: carries at most 3 A at full output; its conductors may carry 3 A && limit at most 3 A; data sheet of own/thin
  loudspeaker "Y" { tap = "300 W" }
}
