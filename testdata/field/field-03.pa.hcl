# A field report: an installer in a care home wants to know which voltage to find at
# each loudspeaker, and his meters wander below 1 V. On speech they have to: only a
# steady tone at a stated level of the amplifier can be compared. What can be
# measured without one is the impedance of the line, amplifier disconnected: 36.5 W
# are 137 ohm. One loudspeaker of 1 W on its 25 V terminals draws 8 W and makes
# 115 ohm, 16 % low: a reading of the whole house hides it, one of a part (here six
# rooms) shows it. Names and lengths are invented.
amplifier "Amp" { rated_power = "60 W" }
line "House" {
  amplifier = "Amp"
  output    = "70 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "Seen" {
    quantity = 29
    tap      = "1 W"
    spacing  = "5 m"
  }
  branch "East wing" {
    leg = "5 m"
    loudspeaker "East" {
      quantity = 6
      tap      = "1 W"
      leg      = "5 m"
      spacing  = "5 m"
    }
  }
  loudspeaker "Hall" {
    tap = "1.5 W"
    leg = "5 m"
  }
}
reading "At a loudspeaker" {
  line   = "House"
  at     = "Seen 4"
  volts  = "0.8 V" # expect reading-agrees open: on speech, which says nothing && missing steady tone at a stated level of the amplifier && (70.7 V)² / 36.5 W = 137 ohm
  signal = "speech"
}
reading "Whole house" {
  line                   = "House"
  impedance              = "115 ohm" # expect reading-agrees pass: with one loudspeaker of 1 W on its 25 V terminals && 116.2 ohm; inside the band: this reading hides it
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
reading "East wing alone" {
  line                   = "House"
  beyond                 = "East wing"
  impedance              = "385 ohm" # expect reading-agrees fail warning: beyond "East wing" && 1 loudspeaker on the 25 V terminals && each draws 8 times its marking
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
