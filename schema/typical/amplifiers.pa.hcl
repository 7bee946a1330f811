# Amplifiers typical of their class. All figures are invented; no entry is the
# product of a maker. To use one as a start for a catalogue of your own, copy its
# block, give it a name of your own and put in the figures of the data sheet.

amplifier_model "typical/mixer-amp-60" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "80 Hz"
  mains_idle       = "12 W"
  mains_full       = "115 W"
  routing          = "one programme, all lines"
  channel "Main" { rated_power = "60 W" }
  output "100 V" {
    channel    = "Main"
    volts      = "100 V"
    never_with = ["70 V", "8 ohm"]
  }
  output "70 V" {
    channel    = "Main"
    volts      = "70 V"
    never_with = ["100 V", "8 ohm"]
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["100 V", "70 V"]
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin connector only
    mutes       = ["Mic 2", "Aux"]
    mute_depth  = "full"
    phantom     = "none"
  }
  input "Mic 2" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "none"
  }
  input "Aux" {
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
}

amplifier_model "typical/mixer-amp-120" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "60 Hz"
  mains_idle       = "18 W"
  mains_full       = "220 W"
  routing          = "one programme, all lines"
  channel "Main" { rated_power = "120 W" }
  output "100 V" {
    channel    = "Main"
    volts      = "100 V"
    never_with = ["70 V", "8 ohm"]
  }
  output "70 V" {
    channel    = "Main"
    volts      = "70 V"
    never_with = ["100 V", "8 ohm"]
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["100 V", "70 V"]
  }
  output "Line out" {
    level     = "0 dBV"
    impedance = "600 ohm"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin connector only
    mutes       = ["Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mute_depth  = "full"
    phantom     = "none"
  }
  input "Mic" {
    quantity    = 2
    first       = 2
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "none"
  }
  input "Aux" {
    quantity    = 2
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
}

amplifier_model "typical/mixer-amp-240" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "60 Hz"
  mains_idle       = "25 W"
  mains_full       = "430 W"
  routing          = "one programme, all lines"
  channel "Main" { rated_power = "240 W" }
  output "100 V" {
    channel    = "Main"
    volts      = "100 V"
    never_with = ["70 V", "8 ohm"]
  }
  output "70 V" {
    channel    = "Main"
    volts      = "70 V"
    never_with = ["100 V", "8 ohm"]
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["100 V", "70 V"]
  }
  output "Line out" {
    level     = "0 dBV"
    impedance = "600 ohm"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin connector only
    mutes       = ["Mic 2", "Mic 3", "Telephone", "Aux 1", "Aux 2"]
    mute_depth  = "full"
    phantom     = "48 V"
  }
  input "Mic" {
    quantity    = 2
    first       = 2
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "48 V"
  }
  input "Telephone" {
    takes       = "telephone"
    sensitivity = "-10 dBV"
    impedance   = "600 ohm"
    balanced    = true
    isolated    = true
    connectors  = ["screw terminals"]
    triggers    = ["signal"]
    mutes       = ["Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mute_depth  = "full"
  }
  input "Aux" {
    quantity    = 2
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
  input "Fire mute" {
    takes      = "contact"
    mutes      = ["Mic 1", "Mic 2", "Mic 3", "Telephone", "Aux 1", "Aux 2"]
    mutes_on   = "open"
    connectors = ["screw terminals"]
  }
}

amplifier_model "typical/mixer-amp-120-4zone" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "60 Hz"
  mains_idle       = "20 W"
  mains_full       = "225 W"
  routing          = "one programme, lines switched"
  channel "Main" { rated_power = "120 W" }
  output "Zone" {
    quantity     = 4 # Zone 1 to Zone 4, all behind the one channel
    channel      = "Main"
    volts        = "100 V"
    highest_load = "120 W"
    switched     = true
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["Zone 1", "Zone 2", "Zone 3", "Zone 4"]
  }
  output "Line out" {
    level     = "0 dBV"
    impedance = "600 ohm"
  }
  input "Mic 1" {
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["DIN 5", "XLR 3"]
    triggers      = ["contact"]
    needs_cores   = 5 # the contact comes through the 5-pin connector only
    mutes         = ["Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mute_depth    = "full"
    opens_outputs = true
    phantom       = "none"
  }
  input "Mic" {
    quantity      = 2
    first         = 2
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["XLR 3"]
    triggers      = []
    opens_outputs = false
    phantom       = "none"
  }
  input "Aux" {
    quantity      = 2
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "22 kohm"
    connectors    = ["RCA pair"]
    triggers      = []
    opens_outputs = false
    stereo        = "summed inside"
  }
}

amplifier_model "typical/mixer-amp-240-4zone" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "60 Hz"
  mains_idle       = "25 W"
  mains_full       = "430 W"
  routing          = "one programme, lines switched"
  channel "Main" { rated_power = "240 W" }
  output "Zone" {
    quantity     = 4 # Zone 1 to Zone 4, all behind the one channel
    channel      = "Main"
    volts        = "100 V"
    highest_load = "240 W"
    switched     = true
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["Zone 1", "Zone 2", "Zone 3", "Zone 4"]
  }
  output "Line out" {
    level     = "0 dBV"
    impedance = "600 ohm"
  }
  input "Mic 1" {
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["DIN 5", "XLR 3"]
    triggers      = ["contact"]
    needs_cores   = 5 # the contact comes through the 5-pin connector only
    mutes         = ["Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mute_depth    = "full"
    opens_outputs = true
    phantom       = "none"
  }
  input "Mic" {
    quantity      = 2
    first         = 2
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["XLR 3"]
    triggers      = []
    opens_outputs = false
    phantom       = "none"
  }
  input "Aux" {
    quantity      = 2
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "22 kohm"
    connectors    = ["RCA pair"]
    triggers      = []
    opens_outputs = false
    stereo        = "summed inside"
  }
  input "Fire mute" {
    takes      = "contact"
    mutes      = ["Mic 1", "Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mutes_on   = "open"
    connectors = ["screw terminals"]
  }
}

amplifier_model "typical/mixer-amp-360-6zone" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "32 W"
  mains_full       = "640 W"
  routing          = "one programme, lines switched"
  channel "Main" { rated_power = "360 W" }
  output "Zone" {
    quantity     = 6 # Zone 1 to Zone 6, all behind the one channel
    channel      = "Main"
    volts        = "100 V"
    highest_load = "180 W"
    switched     = true
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["Zone 1", "Zone 2", "Zone 3", "Zone 4", "Zone 5", "Zone 6"]
  }
  output "Line out" {
    level     = "0 dBV"
    impedance = "600 ohm"
  }
  input "Mic 1" {
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["DIN 5", "XLR 3"]
    triggers      = ["contact"]
    needs_cores   = 5 # the contact comes through the 5-pin connector only
    mutes         = ["Telephone", "Alert", "Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2"]
    mute_depth    = "full"
    opens_outputs = true
    phantom       = "48 V"
  }
  input "Telephone" {
    takes         = "telephone"
    sensitivity   = "-10 dBV"
    impedance     = "600 ohm"
    balanced      = true
    isolated      = true
    connectors    = ["screw terminals"]
    triggers      = ["signal"]
    mutes         = ["Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2"]
    mute_depth    = "full"
    opens_outputs = true
  }
  input "Alert" { # for a message store or bell: its own signal silences the rest
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "10 kohm"
    balanced      = true
    connectors    = ["screw terminals"]
    triggers      = ["contact", "signal"]
    mutes         = ["Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2"]
    mute_depth    = "full"
    opens_outputs = true
  }
  input "Mic" {
    quantity      = 3
    first         = 2
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["XLR 3"]
    triggers      = []
    opens_outputs = false
    phantom       = "48 V"
  }
  input "Aux" {
    quantity      = 2
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "22 kohm"
    connectors    = ["RCA pair"]
    triggers      = []
    opens_outputs = false
    stereo        = "summed inside"
  }
  input "Fire mute" {
    takes      = "contact"
    mutes      = ["Mic 1", "Telephone", "Alert", "Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2"]
    mutes_on   = "open"
    connectors = ["screw terminals"]
  }
}

amplifier_model "typical/mixer-amp-480-5zone" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "40 W"
  mains_full       = "860 W"
  routing          = "one programme, lines switched"
  channel "Main" { rated_power = "480 W" }
  output "Zone" {
    quantity     = 5 # Zone 1 to Zone 5, all behind the one channel
    channel      = "Main"
    volts        = "100 V"
    highest_load = "240 W"
    switched     = true
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["Zone 1", "Zone 2", "Zone 3", "Zone 4", "Zone 5"]
  }
  output "Line out" {
    level     = "0 dBV"
    impedance = "600 ohm"
  }
  input "Mic 1" {
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["DIN 5", "XLR 3"]
    triggers      = ["contact"]
    needs_cores   = 5 # the contact comes through the 5-pin connector only
    mutes         = ["Alert", "Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2", "Aux 3"]
    mute_depth    = "full"
    opens_outputs = true
    phantom       = "48 V"
  }
  input "Alert" { # for a message store or bell: its own signal silences the rest
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "10 kohm"
    balanced      = true
    connectors    = ["screw terminals"]
    triggers      = ["contact", "signal"]
    mutes         = ["Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2", "Aux 3"]
    mute_depth    = "full"
    opens_outputs = true
  }
  input "Mic" {
    quantity      = 3
    first         = 2
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["XLR 3"]
    triggers      = []
    opens_outputs = false
    phantom       = "48 V"
  }
  input "Aux" {
    quantity      = 3
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "22 kohm"
    connectors    = ["RCA pair"]
    triggers      = []
    opens_outputs = false
    stereo        = "summed inside"
  }
  input "Fire mute" {
    takes      = "contact"
    mutes      = ["Mic 1", "Alert", "Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2", "Aux 3"]
    mutes_on   = "open"
    connectors = ["screw terminals"]
  }
}

amplifier_model "typical/mixer-amp-35-25v" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "80 Hz"
  mains_idle       = "10 W"
  mains_full       = "75 W"
  routing          = "one programme, all lines"
  channel "Main" { rated_power = "35 W" }
  output "25 V" {
    channel      = "Main"
    volts        = "25 V"
    never_with   = ["70 V", "8 ohm"]
    wiring_class = "Class 2"
  }
  output "70 V" {
    channel      = "Main"
    volts        = "70 V"
    never_with   = ["25 V", "8 ohm"]
    wiring_class = "Class 3"
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["25 V", "70 V"]
    wiring_class     = "Class 2"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["screw terminals", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # balanced pair, shield and two for the contact
    mutes       = ["Mic 2", "Aux"]
    mute_depth  = "full"
    phantom     = "none"
  }
  input "Mic 2" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "none"
  }
  input "Aux" {
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
}

amplifier_model "typical/mixer-amp-60-70v" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "80 Hz"
  mains_idle       = "12 W"
  mains_full       = "120 W"
  routing          = "one programme, all lines"
  channel "Main" { rated_power = "60 W" }
  output "70 V" {
    channel      = "Main"
    volts        = "70 V"
    never_with   = ["25 V", "8 ohm"]
    wiring_class = "Class 3"
  }
  output "25 V" {
    channel      = "Main"
    volts        = "25 V"
    never_with   = ["70 V", "8 ohm"]
    wiring_class = "Class 2"
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["70 V", "25 V"]
    wiring_class     = "Class 2"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["screw terminals", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # balanced pair, shield and two for the contact
    mutes       = ["Telephone", "Mic 2", "Aux"]
    mute_depth  = "full"
    phantom     = "none"
  }
  input "Telephone" {
    takes       = "telephone"
    sensitivity = "-10 dBV"
    impedance   = "600 ohm"
    balanced    = true
    isolated    = true
    connectors  = ["screw terminals"]
    triggers    = ["signal"]
    mutes       = ["Mic 2", "Aux"]
    mute_depth  = "full"
  }
  input "Mic 2" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "none"
  }
  input "Aux" {
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
}

amplifier_model "typical/mixer-amp-100-70v" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "mixer amplifier"
  lowest_frequency = "60 Hz"
  mains_idle       = "16 W"
  mains_full       = "190 W"
  routing          = "one programme, all lines"
  channel "Main" { rated_power = "100 W" }
  output "70 V" {
    channel      = "Main"
    volts        = "70 V"
    never_with   = ["25 V", "8 ohm"]
    wiring_class = "Class 3"
  }
  output "25 V" {
    channel      = "Main"
    volts        = "25 V"
    never_with   = ["70 V", "8 ohm"]
    wiring_class = "Class 2"
  }
  output "8 ohm" {
    channel          = "Main"
    lowest_impedance = "8 ohm"
    never_with       = ["70 V", "25 V"]
    wiring_class     = "Class 2"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["screw terminals", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # balanced pair, shield and two for the contact
    mutes       = ["Telephone", "Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mute_depth  = "full"
    phantom     = "none"
  }
  input "Telephone" {
    takes       = "telephone"
    sensitivity = "-10 dBV"
    impedance   = "600 ohm"
    balanced    = true
    isolated    = true
    connectors  = ["screw terminals"]
    triggers    = ["signal"]
    mutes       = ["Mic 2", "Mic 3", "Aux 1", "Aux 2"]
    mute_depth  = "full"
  }
  input "Mic" {
    quantity    = 2
    first       = 2
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "none"
  }
  input "Aux" {
    quantity    = 2
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
}

amplifier_model "typical/line-amp-120" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "15 W"
  mains_full       = "215 W"
  battery_volts    = "24 V"
  battery_idle     = "0.5 A"
  battery_full     = "8 A"
  channel "Main" { rated_power = "120 W" }
  output "100 V" {
    channel    = "Main"
    volts      = "100 V"
    never_with = ["70 V"]
  }
  output "70 V" {
    channel    = "Main"
    volts      = "70 V"
    never_with = ["100 V"]
  }
  input "Line in" {
    takes       = "line"
    channel     = "Main"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3", "screw terminals"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-240" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "22 W"
  mains_full       = "420 W"
  battery_volts    = "24 V"
  battery_idle     = "0.7 A"
  battery_full     = "16 A"
  channel "Main" { rated_power = "240 W" }
  output "100 V" {
    channel    = "Main"
    volts      = "100 V"
    never_with = ["70 V"]
  }
  output "70 V" {
    channel    = "Main"
    volts      = "70 V"
    never_with = ["100 V"]
  }
  input "Line in" {
    takes       = "line"
    channel     = "Main"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3", "screw terminals"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-480" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "35 W"
  mains_full       = "840 W"
  battery_volts    = "24 V"
  battery_idle     = "1.1 A"
  battery_full     = "31 A"
  channel "Main" { rated_power = "480 W" }
  output "100 V" {
    channel    = "Main"
    volts      = "100 V"
    never_with = ["70 V"]
  }
  output "70 V" {
    channel    = "Main"
    volts      = "70 V"
    never_with = ["100 V"]
  }
  input "Line in" {
    takes       = "line"
    channel     = "Main"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3", "screw terminals"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-240-70v" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "22 W"
  mains_full       = "420 W"
  channel "Main" { rated_power = "240 W" }
  output "70 V" {
    channel      = "Main"
    volts        = "70 V"
    never_with   = ["25 V", "4 ohm"]
    wiring_class = "Class 1"
  }
  output "25 V" {
    channel      = "Main"
    volts        = "25 V"
    never_with   = ["70 V", "4 ohm"]
    wiring_class = "Class 1"
  }
  output "4 ohm" {
    channel          = "Main"
    lowest_impedance = "4 ohm"
    never_with       = ["70 V", "25 V"]
    wiring_class     = "Class 2"
  }
  input "Line in" {
    takes       = "line"
    channel     = "Main"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3", "6.35 mm jack 3-pole"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-2x240" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "40 W"
  mains_full       = "840 W"
  channel "Channel" {
    quantity    = 2
    rated_power = "240 W"
  }
  output "Channel" {
    quantity = 2
    channel  = "Channel" # Channel 1 is behind Channel 1, and so on
    volts    = "100 V"
  }
  input "Channel" {
    quantity    = 2
    channel     = "Channel"
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["pluggable terminals 3"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-4x120" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "45 W"
  mains_full       = "900 W"
  battery_volts    = "24 V"
  battery_idle     = "0.9 A"
  battery_full     = "28 A"
  channel "Channel" {
    quantity    = 4
    rated_power = "120 W"
  }
  output "Channel" {
    quantity = 4
    channel  = "Channel" # Channel 1 is behind Channel 1, and so on
    volts    = "100 V"
  }
  input "Channel" {
    quantity    = 4
    channel     = "Channel"
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["pluggable terminals 3"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-8x60" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "40 W"
  mains_full       = "640 W"
  battery_volts    = "24 V"
  battery_idle     = "1 A"
  battery_full     = "26 A"
  channel "Channel" {
    quantity    = 8
    rated_power = "60 W"
  }
  output "Channel" {
    quantity = 8
    channel  = "Channel" # Channel 1 is behind Channel 1, and so on
    volts    = "100 V"
  }
  input "Channel" {
    quantity    = 8
    channel     = "Channel"
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["pluggable terminals 3"]
    triggers    = []
  }
}

amplifier_model "typical/line-amp-4x250-70v" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "power amplifier"
  lowest_frequency = "50 Hz"
  mains_idle       = "30 W"
  mains_full       = "1250 W"
  channel "Channel" {
    quantity    = 4
    rated_power = "250 W"
  }
  output "Channel" {
    quantity     = 4
    channel      = "Channel" # Channel 1 is behind Channel 1, and so on
    volts        = "70 V"
    wiring_class = "Class 1"
  }
  input "Channel" {
    quantity    = 4
    channel     = "Channel"
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["pluggable terminals 3"]
    triggers    = []
  }
}

amplifier_model "typical/low-impedance-amp-2x50" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "low-impedance amplifier"
  lowest_frequency = "20 Hz"
  mains_idle       = "15 W"
  mains_full       = "180 W"
  channel "Left" { rated_power = "50 W" }
  channel "Right" { rated_power = "50 W" }
  output "Left" {
    channel          = "Left"
    lowest_impedance = "4 ohm"
    rated_into       = "4 ohm"
  }
  output "Right" {
    channel          = "Right"
    lowest_impedance = "4 ohm"
    rated_into       = "4 ohm"
  }
  input "Left" {
    takes       = "line"
    channel     = "Left"
    sensitivity = "-2 dBV"
    impedance   = "20 kohm"
    balanced    = false
    connectors  = ["RCA"]
    triggers    = []
  }
  input "Right" {
    takes       = "line"
    channel     = "Right"
    sensitivity = "-2 dBV"
    impedance   = "20 kohm"
    balanced    = false
    connectors  = ["RCA"]
    triggers    = []
  }
}

amplifier_model "typical/low-impedance-amp-2x300" {
  note             = "invented figures, typical of the class; of no maker"
  kind             = "low-impedance amplifier"
  lowest_frequency = "20 Hz"
  mains_idle       = "45 W"
  mains_full       = "980 W"
  channel "Left" { rated_power = "300 W" }
  channel "Right" { rated_power = "300 W" }
  output "Left" {
    channel          = "Left"
    lowest_impedance = "4 ohm"
    rated_into       = "4 ohm"
  }
  output "Right" {
    channel          = "Right"
    lowest_impedance = "4 ohm"
    rated_into       = "4 ohm"
  }
  input "Left" {
    takes       = "line"
    channel     = "Left"
    sensitivity = "2 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3", "6.35 mm jack 3-pole"]
    triggers    = []
  }
  input "Right" {
    takes       = "line"
    channel     = "Right"
    sensitivity = "2 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3", "6.35 mm jack 3-pole"]
    triggers    = []
  }
}
