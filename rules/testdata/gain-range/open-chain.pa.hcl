# Whether the amplifier makes up for what the mixer lacks is not known, as the
# mixer's nominal level is not stated.
mixer "Desk" {
  routing = "one programme, all lines"
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-50 dBV"
  }
  send "Main" {
    into  = "Amp"
    input = "Line in" # expect open: How much gain Main of Desk needs at Amp cannot be told && nominal level of output "Main" of mixer "Desk" && output "Main" { level = "0 dBV" }
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
  input = "Mic" # expect open: Lectern has -6 dB in hand at Mic of Desk; whether the units behind it make up for that cannot be told
  level = "-56 dBV"
}
