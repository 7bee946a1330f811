# The line is opened behind parts of it: beyond a tee its braces count, beyond a loudspeaker what follows.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "20 m"
  loudspeaker "H" {
    quantity = 10
    tap      = "10 W"
    spacing  = "5 m"
  }
  branch "Tee" {
    leg = "5 m"
    loudspeaker "Y" {
      quantity = 2
      tap      = "20 W"
      leg      = "10 m"
      spacing  = "10 m"
    }
  }
}
reading "Branch" {
  line = "Hall"
  impedance = "250 ohm" # expect pass: beyond "Tee" && (100 V)² / 40 W = 250 ohm
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  beyond = "Tee"
}
reading "Behind the eighth" {
  line = "Hall"
  impedance = "166 ohm" # expect pass: (100 V)² / 60 W = 166.7 ohm
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  beyond = "H 8"
}
reading "At the far end" {
  line = "Hall"
  impedance = "72 ohm" # expect pass: at "Y 2"
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
  at = "Y 2"
}
reading "Whole" {
  line = "Hall"
  impedance = "72 ohm" # expect pass: line "Hall" at 1 kHz
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
