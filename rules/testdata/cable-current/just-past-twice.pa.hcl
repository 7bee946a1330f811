# Twice what the data sheet says is a warning yet, and a watt more an error.
amplifier "Rack" { rated_power = "1000 W" }
cable_model "own/short" {
  size    = "120 mm2"
  cores   = 2
  current = "1.5 A"
}
line "Twice" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/short" # expect fail warning: carries 3 A at full output; its conductors may carry 1.5 A && limit at most 1.5 A
  home_run  = "0.5 m"
  loudspeaker "T" { tap = "300 W" }
}
line "More" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/short" # expect fail error: carries 3.01 A && limit at most 3 A (200 % of 1.5 A)
  home_run  = "0.5 m"
  loudspeaker "M" { tap = "301 W" }
}
