# Mixers, pre-amplifiers and matrices typical of their class. All figures are
# invented; no entry is the product of a maker.

mixer_model "typical/pre-mixer-6" {
  note       = "invented figures, typical of the class; of no maker"
  kind       = "pre-amplifier"
  mains_idle = "8 W"
  mains_full = "9 W"
  routing    = "one programme, all lines"
  output "Main" {
    level     = "0 dBV"
    impedance = "100 ohm"
    balanced  = true
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin connector only
    mutes       = ["Mic 2", "Mic 3", "Mic 4", "Aux 1", "Aux 2"]
    mute_depth  = "full"
  }
  input "Mic" {
    quantity    = 3
    first       = 2
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "48 V"
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

mixer_model "typical/pre-mixer-8-4zone" {
  note       = "invented figures, typical of the class; of no maker"
  kind       = "pre-amplifier"
  mains_idle = "12 W"
  mains_full = "14 W"
  routing    = "one programme, lines switched"
  output "Zone" {
    quantity  = 4 # each to an amplifier of its own
    level     = "0 dBV"
    impedance = "100 ohm"
    balanced  = true
    switched  = true
  }
  input "Desk" { # the desk's keys choose the zones
    takes      = "paging desk"
    connectors = ["RJ45"]
    triggers   = ["contact"]
    selects    = "each output"
    mutes      = ["Telephone", "Mic 1", "Mic 2", "Mic 3", "Aux 1", "Aux 2", "Aux 3"]
    mute_depth = "full"
  }
  input "Telephone" {
    takes         = "telephone"
    sensitivity   = "-10 dBV"
    impedance     = "600 ohm"
    balanced      = true
    isolated      = true
    connectors    = ["screw terminals"]
    triggers      = ["signal"]
    mutes         = ["Mic 1", "Mic 2", "Mic 3", "Aux 1", "Aux 2", "Aux 3"]
    mute_depth    = "full"
    opens_outputs = true
  }
  input "Mic" {
    quantity      = 3
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
}

mixer_model "typical/matrix-8x8" {
  note       = "invented figures, typical of the class; of no maker"
  kind       = "matrix"
  mains_idle = "22 W"
  mains_full = "24 W"
  routing    = "any input to any output"
  output "Zone" {
    quantity  = 8
    level     = "4 dBu"
    impedance = "100 ohm"
    balanced  = true
  }
  input "Desk" {
    takes      = "paging desk"
    connectors = ["RJ45"]
    triggers   = ["contact"]
    selects    = "each output"
    mutes      = ["Mic 1", "Mic 2", "Music 1", "Music 2", "Music 3", "Music 4"]
    mute_depth = "full"
  }
  input "Alert" { # for a message store: stands above the desk
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "10 kohm"
    balanced    = true
    connectors  = ["screw terminals"]
    triggers    = ["contact"]
    mutes       = ["Desk", "Mic 1", "Mic 2", "Music 1", "Music 2", "Music 3", "Music 4"]
    mute_depth  = "full"
  }
  input "Mic" {
    quantity    = 2
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["pluggable terminals 3"]
    triggers    = []
    phantom     = "48 V"
  }
  input "Music" {
    quantity    = 4
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "10 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
}

mixer_model "typical/matrix-16-standby" {
  note          = "invented figures, typical of the class; of no maker"
  kind          = "matrix"
  mains_idle    = "20 W"
  mains_full    = "24 W"
  battery_volts = "24 V"
  battery_idle  = "0.5 A"
  battery_full  = "0.6 A"
  routing       = "any input to any output"
  output "Zone" {
    quantity  = 16
    level     = "4 dBu"
    impedance = "100 ohm"
    balanced  = true
    isolated  = true
  }
  input "Urgent" {
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "10 kohm"
    balanced    = true
    connectors  = ["screw terminals"]
    triggers    = ["contact"]
    mutes       = ["Desk 1", "Desk 2", "Music 1", "Music 2"]
    mute_depth  = "full"
  }
  input "Desk" {
    quantity   = 2
    takes      = "paging desk"
    connectors = ["RJ45"]
    triggers   = ["contact"]
    selects    = "each output"
    mutes      = ["Music 1", "Music 2"]
    mute_depth = "full"
  }
  input "Music" {
    quantity    = 2
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "10 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "left and right kept"
  }
  input "Fire mute" {
    takes      = "contact"
    connectors = ["screw terminals"]
    mutes      = ["Urgent", "Desk 1", "Desk 2", "Music 1", "Music 2"]
    mutes_on   = "open"
  }
}

mixer_model "typical/sound-mixer-12" {
  note       = "invented figures, typical of the class; of no maker"
  kind       = "sound mixer"
  mains_idle = "18 W"
  mains_full = "22 W"
  routing    = "one programme, all lines"
  # Left and right are two outputs: for a mono line use Mono, never both tied.
  output "Main left" {
    level     = "4 dBu"
    impedance = "150 ohm"
    balanced  = true
  }
  output "Main right" {
    level     = "4 dBu"
    impedance = "150 ohm"
    balanced  = true
  }
  output "Mono" {
    level     = "4 dBu"
    impedance = "150 ohm"
    balanced  = true
  }
  input "Mic" {
    quantity    = 8
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2.4 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
    phantom     = "48 V"
  }
  input "Stereo" {
    quantity    = 2
    takes       = "line"
    sensitivity = "-20 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["6.35 mm jack 3-pole"]
    triggers    = []
    stereo      = "left and right kept"
  }
}
