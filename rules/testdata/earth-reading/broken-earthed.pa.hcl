# One conductor is earthed; 100 kohm is poor insulation.
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
reading "Earthed" {
  line = "Hall"
  earth = "0 ohm" # expect fail error: connected to earth
  amplifier_disconnected = true
}
reading "Damp" {
  line = "Hall"
  insulation = "100 kohm" # expect fail warning: insulation is poor
  amplifier_disconnected = true
}
reading "Perhaps the amplifier" {
  line = "Hall"
  earth = "0.5 ohm" # expect fail error: assumed the amplifier was disconnected && Take the amplifier off
}
