# A field report: a house with five rooms on 100 V has destroyed two amplifiers, and
# what its owner read on a resistance meter, room by room, does not agree: 1.21 for
# three loudspeakers, 3.51 for one, 0.359 on the 2k range for one and again for one,
# 181.5 (no "k" on the display, so ohms) for two. For each loudspeaker that is 3.6 kohm twice and 360 ohm three times:
# a factor of ten, a slip of the range or a control left turned down. Together the
# lines are 0.9 ohm if the first two are in ohms, 82 ohm if in kilohms; neither can be
# held against the 50 ohm that the amplifier asks for, because a resistance meter
# sees only copper. Names are invented.
amplifier "Amp" {
  rated_power      = "200 W"
  output "100 V" {
    volts            = "100 V"
    lowest_impedance = "50 ohm"
  }
}
line "Kitchen" {
  amplifier = "Amp"
  output    = "100 V"
  existing "Kitchen units" { quantity = 3 }
}
line "Bath" {
  amplifier = "Amp"
  output    = "100 V"
  existing "Bath unit" { quantity = 1 }
}
line "Study" {
  amplifier = "Amp"
  output    = "100 V"
  existing "Study unit" { quantity = 1 }
}
line "Bedroom" {
  amplifier = "Amp"
  output    = "100 V"
  existing "Bedroom unit" { quantity = 1 }
}
line "Lounge" {
  amplifier = "Amp"
  output    = "100 V"
  existing "Lounge units" { quantity = 2 }
}
reading "Kitchen, by the owner" {
  line       = "Kitchen"
  impedance  = "1.21" # expect reading-agrees open: missing unit of the reading && 0.8909 ohm if what has no unit is in ohms, 82.02 ohm if in kilohms && 3.63 kohm && a slip of the meter's range
  instrument = "ohmmeter"
}
reading "Bath, by the owner" {
  line       = "Bath"
  impedance  = "3.51" # expect reading-agrees open: 3.51 ohm && 3.51 kohm && a slip of the meter's range
  instrument = "ohmmeter"
}
reading "Study, by the owner" {
  line       = "Study"
  impedance  = "0.359 kohm" # expect reading-agrees open: copper of cable and transformers && missing impedance, measured with a tone
  instrument = "ohmmeter"
}
reading "Bedroom, by the owner" {
  line       = "Bedroom"
  impedance  = "0.359 kohm" # expect reading-agrees open
  instrument = "ohmmeter"
}
reading "Lounge, by the owner" {
  line       = "Lounge"
  impedance  = "181.5 ohm" # expect reading-agrees open: copper of cable and transformers && 363 ohm && a slip of the meter's range
  instrument = "ohmmeter"
}
