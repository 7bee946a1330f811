# 100 W on 100 V are 100 ohm without cable to speak of: 75 and 120 ohm are the ends of the band.
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
reading "Low" {
  line = "Hall"
  impedance = "75 ohm" # expect pass: 75 ohm to 120 ohm
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
reading "High" {
  line = "Hall"
  impedance = "120 ohm" # expect pass: load that the reading implies 83.3
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
