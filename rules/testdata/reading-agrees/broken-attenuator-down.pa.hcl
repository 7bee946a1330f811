# 200 W are drawn, half of them behind a control that the reading calls fully up; 6 dB down leaves 25 W of them: 125 W, 80 ohm.
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
  impedance = "80 ohm" # expect fail warning: attenuator "Level" left 6 dB down
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  attenuators = "all fully up"
}
