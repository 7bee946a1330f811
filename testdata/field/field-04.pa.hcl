# A field report: thirty-year-old lines on three floors, 120 loudspeakers of half a
# watt, and three amplifiers of 600 W bought one after the other to get past the
# faults. 60 W are 83 ohm; what the meter showed, 8 ohm, is more than one 600 W
# amplifier can feed and proves a short, whatever else is wrong. On one floor both
# conductors were earthed. Names, and how the floors are joined, are invented; one
# amplifier stands for the three.
amplifier "Amp" { rated_power = "600 W" }
line "Building" {
  amplifier = "Amp"
  output    = "70 V"
  branch "Floor 1" {
    loudspeaker "F1" {
      quantity = 40
      tap      = "0.5 W"
    }
  }
  branch "Floor 2" {
    loudspeaker "F2" {
      quantity = 40
      tap      = "0.5 W"
    }
  }
  branch "Floor 3" {
    loudspeaker "F3" {
      quantity = 40
      tap      = "0.5 W"
    }
  }
}
reading "Building" {
  line                   = "Building"
  impedance              = "8.1 ohm" # expect reading-agrees fail error: 617.3 W instead of 60 W && a short circuit && (70.7 V)² / 60 W = 83.33 ohm
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
reading "Floor 1" {
  line                   = "Building"
  beyond                 = "Floor 1"
  impedance              = "225 ohm" # expect reading-agrees pass: (70.7 V)² / 20 W = 250 ohm
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
reading "Floor 2" {
  line                   = "Building"
  beyond                 = "Floor 2"
  impedance              = "8.4 ohm" # expect reading-agrees fail error: a short circuit
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  earth                  = "0 ohm" # expect earth-reading fail error: a conductor is connected to earth
  amplifier_disconnected = true
}
