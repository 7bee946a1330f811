# A source that lacks something in the mixer has it lent by the amplifier; music
# through summing resistors; a desk on a data input, of which no level is known.
mixer "Desk" {
  routing = "one programme, all lines"
  output "Main" { level = "+4 dBu" }
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-50 dBV"
  }
  input "Line" {
    takes       = "line"
    sensitivity = "-20 dBV"
    impedance   = "20 kohm"
  }
  input "Data" { takes = "paging desk" }
  send "Main" {
    into  = "Amp"
    input = "Line in" # expect pass: Main of Desk has 11.78 dB in hand at Line in of Amp: at rated output its control sits 11.78 dB below fully up.
  }
}
amplifier "Amp" {
  rated_power = "120 W"
  input "Line in" {
    takes       = "line"
    sensitivity = "-10 dBV"
  }
}
line "Hall" {
  amplifier = "Amp"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Lectern" {
  into  = "Desk"
  input = "Mic" # expect pass: Lectern has 5.782 dB in hand on its way to Amp: at rated output its control sits fully up. && -6 dB (Mic of Desk) + 11.78 dB (Line in of Amp) = 5.782 dB
  level = "-56 dBV"
}
music "Tablet" {
  into      = "Desk"
  input     = "Line" # expect pass: Tablet has 6.887 dB in hand && -10 dBV − 3.113 dB (in summing resistors) − (-20 dBV) = 6.887 dB && assumed the summing resistors are of about 475 ohm each
  channels  = "stereo"
  summed_by = "resistors"
  level     = "-10 dBV"
}
microphone "Reception" {
  into  = "Desk"
  input = "Data"
}
