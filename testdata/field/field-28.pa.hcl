# A field report: the primaries of a real line transformer, as measured or listed,
# lie up to 14 % below V² / P on 70.7 V and up to 17 % below it on 25 V. Readings of
# sound transformers therefore pass: the band around the prediction is wider than
# that. One loudspeaker at a time is measured here, on the taps that lie furthest
# from the formula. Names are invented.
amplifier "Amp at 70 V" { rated_power = "60 W" }
amplifier "Amp at 25 V" { rated_power = "20 W" }
line "12 W tap" {
  amplifier = "Amp at 70 V"
  output    = "70 V"
  loudspeaker "A" { tap = "12 W" }
}
line "0.31 W tap" {
  amplifier = "Amp at 25 V"
  output    = "25 V"
  loudspeaker "B" { tap = "0.31 W" }
}
reading "Primary at 12 W" {
  line                   = "12 W tap"
  impedance              = "360 ohm" # expect reading-agrees pass
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
reading "Primary at 0.31 W" {
  line                   = "0.31 W tap"
  impedance              = "1680 ohm" # expect reading-agrees pass
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
