# Microphones and paging desks typical of their class. All figures are invented;
# no entry is the product of a maker.
#
# The level is that of a voice at the distance the microphone is made for. One
# without a contact has nothing but its own signal to silence others with.

microphone_model "typical/desk-contact-din" { # talk key with a contact, which has two pins of its own
  note      = "invented figures, typical of the class; of no maker"
  level     = "-54 dBV"
  impedance = "200 ohm"
  balanced  = true
  connector = "DIN 5"
  trigger   = "contact"
  phantom   = "none"
}

microphone_model "typical/desk-xlr" { # its key cuts the voice only: three pins carry no contact
  note      = "invented figures, typical of the class; of no maker"
  level     = "-54 dBV"
  impedance = "200 ohm"
  balanced  = true
  connector = "XLR 3"
  trigger   = "signal"
  phantom   = "none"
}

microphone_model "typical/desk-contact-terminals" { # with a pre-amplifier and its own supply; for long leads
  note      = "invented figures, typical of the class; of no maker"
  level     = "-10 dBV"
  impedance = "600 ohm"
  balanced  = true
  connector = "screw terminals"
  trigger   = "contact"
  phantom   = "none"
}

microphone_model "typical/desk-contact-open-ends" { # talk key with a contact; the lead ends in bare wires
  note      = "invented figures, typical of the class; of no maker"
  level     = "-54 dBV"
  impedance = "200 ohm"
  balanced  = true
  connector = "screw terminals"
  trigger   = "contact"
  phantom   = "none"
}

microphone_model "typical/desk-rj45-8" { # zone keys; audio and commands on one data cable
  note      = "invented figures, typical of the class; of no maker"
  connector = "RJ45"
  trigger   = "contact"
  selects   = 8
}

microphone_model "typical/desk-rj45-16" { # zone keys; audio and commands on one data cable
  note      = "invented figures, typical of the class; of no maker"
  connector = "RJ45"
  trigger   = "contact"
  selects   = 16
}

microphone_model "typical/handheld-xlr" { # dynamic
  note      = "invented figures, typical of the class; of no maker"
  level     = "-54 dBV"
  impedance = "300 ohm"
  balanced  = true
  connector = "XLR 3"
  trigger   = "signal"
  phantom   = "none"
}

microphone_model "typical/handheld-contact-din" { # dynamic, with a key in the handle and a coiled lead
  note      = "invented figures, typical of the class; of no maker"
  level     = "-54 dBV"
  impedance = "300 ohm"
  balanced  = true
  connector = "DIN 5"
  trigger   = "contact"
  phantom   = "none"
}

microphone_model "typical/handheld-unbalanced-jack" { # for short leads only
  note      = "invented figures, typical of the class; of no maker"
  level     = "-56 dBV"
  impedance = "600 ohm"
  balanced  = false
  connector = "6.35 mm jack 2-pole"
  trigger   = "signal"
  phantom   = "none"
}

microphone_model "typical/gooseneck-condenser-xlr" { # needs phantom power
  note      = "invented figures, typical of the class; of no maker"
  level     = "-42 dBV"
  impedance = "150 ohm"
  balanced  = true
  connector = "XLR 3"
  trigger   = "signal"
  phantom   = "48 V"
}

microphone_model "typical/gooseneck-condenser-contact-din" { # needs phantom power; talk key with contact
  note      = "invented figures, typical of the class; of no maker"
  level     = "-42 dBV"
  impedance = "150 ohm"
  balanced  = true
  connector = "DIN 5"
  trigger   = "contact"
  phantom   = "48 V"
}
