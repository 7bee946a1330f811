# A desk with a talk contact on a three-pin plug: the mixer amplifier mutes by a
# contact and takes it through five pins only.
amplifier "Rack" { model = "typical/mixer-amp-120-4zone" }
line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
line "Yard" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "Y" {
    quantity = 2
    tap      = "10 W"
  }
}
microphone "Head's desk" {
  into      = "Rack"
  input     = "Mic 1"
  trigger   = "contact"
  connector = "XLR 3" # expect fail error: Head's desk does not silence Hall player and Bell: Mic 1 of Rack mutes by a contact, and an XLR 3 plug has no contacts for it. && contacts of XLR 3 3 && at least 5 contacts && Fit a DIN 5 plug
  priority  = 1
}
music "Hall player" {
  into      = "Rack"
  input     = "Aux 1"
  channels  = "stereo"
  summed_by = "input"
  lines     = ["Hall"]
}
message "Bell" { # expect pass: No source that stands below Bell
  into     = "Rack"
  input    = "Aux 2"
  priority = 2
  lines    = ["Yard"]
}
