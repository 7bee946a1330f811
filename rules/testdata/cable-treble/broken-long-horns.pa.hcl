# Horns along a perimeter road: thick cable keeps the loss down, and its inductance
# is what it always is. With the phase of the current the worst is not quite the last.
amplifier "Rack" { rated_power = "2000 W" }
cable_model "own/2 x 16 mm2" {
  size        = "16 mm2"
  class       = 2
  cores       = 2
  inductance  = "0.65 uH/m"
  capacitance = "90 pF/m"
}
line "Perimeter" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/2 x 16 mm2" # expect fail warning: takes 8.299 dB more at 10 kHz than at 1 kHz at "P 13" && 1320 m of cable to P 13 && lines of the same cable && opposite ones joined
  home_run  = "600 m"
  loudspeaker "P" {
    quantity = 16
    tap      = "50 W"
    spacing  = "60 m"
  }
}
