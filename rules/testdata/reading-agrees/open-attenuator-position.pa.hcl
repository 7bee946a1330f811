# Too high for controls fully up, but nobody noted how they stood.
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
  attenuator "Level" {
    leg = "0 m"
    loudspeaker "Bar" {
      quantity = 10
      tap      = "10 W"
      leg      = "0 m"
      spacing  = "0 m"
    }
  }
}
reading "First fix" {
  line = "Hall"
  impedance = "80 ohm" # expect open: missing how the attenuators stood && attenuator "Level" left
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
