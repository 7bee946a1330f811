# 999 kohm do not; 999 ohm count as earthed and 1 kohm as poor.
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
  insulation = "999 kohm" # expect fail warning: at least 1 Mohm
  amplifier_disconnected = true
}
reading "A" {
  line = "Hall"
  earth = "999 ohm" # expect fail error: at least 1 kohm
  amplifier_disconnected = true
}
reading "B" {
  line = "Hall"
  earth = "1 kohm" # expect fail warning: at least 1 Mohm
  amplifier_disconnected = true
}
