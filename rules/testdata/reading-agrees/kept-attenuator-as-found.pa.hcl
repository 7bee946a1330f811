# The same reading agrees when the control is known to stand 6 dB down; overridden, the line takes all.
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
    setting  = "-6 dB"
    override = "24 V relay"
    loudspeaker "Bar" {
      quantity = 10
      tap      = "10 W"
      leg      = "0 m"
      spacing  = "0 m"
    }
  }
}
reading "As found" {
  line = "Hall"
  impedance = "80 ohm" # expect pass: 79.9
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  attenuators = "as found"
}
reading "Overridden" {
  line = "Hall"
  impedance = "50 ohm" # expect pass: 50 ohm is predicted
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  attenuators = "overridden"
}
