# 50 Mohm, of either kind.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "0 m"
  loudspeaker "H" {
    quantity = 10
    tap      = "10 W"
    spacing  = "0 m"
  }
}
reading "First fix" {
  line = "Hall"
  insulation = "50 Mohm" # expect pass: 50 Mohm of insulation
  earth = "50 Mohm" # expect pass: to earth
  amplifier_disconnected = true
}
