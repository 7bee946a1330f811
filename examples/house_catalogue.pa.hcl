# A house catalogue: the models a firm keeps at hand and its designs bring in
# with use { file = "house_catalogue.pa.hcl" }.
#
# Every figure here is invented. In a catalogue of your own each model is copied
# from the data sheet of what you buy, and note says which one.

amplifier_model "house/mixer-240" {
  kind             = "mixer amplifier"
  note             = "invented"
  lowest_frequency = "60 Hz"
  routing          = "one programme, lines switched"
  channel "Main" { rated_power = "240 W" }
  output "Zone" {
    quantity     = 4 # Zone 1 … Zone 4, all from the one channel
    channel      = "Main"
    volts        = "100 V"
    highest_load = "120 W"
    switched     = true
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
    needs_cores   = 5 # the contact comes through the 5-pin plug only
    mutes         = ["Mic 2", "Aux 1", "Aux 2"]
    mute_depth    = "full"
    opens_outputs = true
  }
  input "Mic 2" {
    takes         = "microphone"
    sensitivity   = "-60 dBV"
    impedance     = "2 kohm"
    balanced      = true
    connectors    = ["XLR 3"]
    triggers      = []
    opens_outputs = false
  }
  input "Aux 1" {
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "22 kohm"
    connectors    = ["RCA pair"]
    triggers      = []
    opens_outputs = false
    stereo        = "summed inside"
  }
  input "Aux 2" {
    takes         = "line"
    sensitivity   = "-16 dBV"
    impedance     = "22 kohm"
    connectors    = ["RCA"]
    triggers      = ["signal"]
    mutes         = ["Aux 1"]
    opens_outputs = true
  }
}

amplifier_model "house/line-480" {
  kind             = "power amplifier"
  note             = "invented"
  lowest_frequency = "50 Hz"
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
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
  }
}

loudspeaker_model "house/ceiling-6" {
  kind             = "ceiling"
  note             = "invented"
  rated_power      = "6 W"
  taps_100V        = ["6 W", "3 W", "1.5 W", "0.75 W"]
  taps_70V         = ["3 W", "1.5 W", "0.75 W", "0.38 W"]
  sensitivity      = "90 dB"
  coverage         = "130 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "120 Hz"
  exposure         = "IP21"
}

loudspeaker_model "house/wall-10" {
  kind             = "wall"
  note             = "invented"
  rated_power      = "10 W"
  taps_100V        = ["10 W", "6 W", "3 W", "1.5 W"]
  taps_70V         = ["5 W", "3 W", "1.5 W", "0.75 W"]
  sensitivity      = "91 dB"
  coverage         = "120 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "100 Hz"
  exposure         = "IP34"
}

loudspeaker_model "house/horn-15" {
  kind             = "horn"
  note             = "invented"
  rated_power      = "15 W"
  taps_100V        = ["15 W", "10 W", "5 W", "2.5 W"]
  taps_70V         = ["15 W", "7.5 W", "5 W", "2.5 W", "1.25 W"]
  sensitivity      = "104 dB"
  coverage         = "90 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "350 Hz"
  exposure         = "IP66"
}

attenuator_model "house/hall-36" {
  note      = "invented"
  rating    = "36 W"
  lowest    = "off"
  override  = "24 V relay"
  current   = "25 mA"
  cores     = 4
  terminals = "1 in, 2 out, 3 common, 4 and 5 relay"
}

microphone_model "house/desk" {
  note      = "invented"
  level     = "-54 dBV"
  impedance = "200 ohm"
  balanced  = true
  connector = "DIN 5"
  trigger   = "contact"
  phantom   = "none"
}

microphone_model "house/handheld" {
  note      = "invented"
  level     = "-56 dBV"
  impedance = "200 ohm"
  balanced  = true
  connector = "XLR 3"
  trigger   = "none"
  phantom   = "none"
}

amplifier_model "house/line-4x120" {
  note             = "invented"
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
    channel  = "Channel" # Channel 1 belongs to Channel 1, and so on
    volts    = "100 V"
  }
  input "Channel" {
    quantity    = 4
    channel     = "Channel"
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["screw terminals"]
  }
}

amplifier_model "house/stereo-2x50" {
  note       = "invented"
  kind       = "power amplifier"
  mains_idle = "15 W"
  mains_full = "180 W"
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
    connectors  = ["RCA"]
  }
  input "Right" {
    takes       = "line"
    channel     = "Right"
    sensitivity = "-2 dBV"
    impedance   = "20 kohm"
    connectors  = ["RCA"]
  }
}

mixer_model "house/matrix-16" {
  note          = "invented"
  mains_idle    = "20 W"
  battery_volts = "24 V"
  battery_idle  = "0.5 A"
  battery_full  = "0.6 A"
  routing       = "any input to any output"
  input "Desk" {
    takes      = "paging desk"
    connectors = ["RJ45"]
    triggers   = ["contact"]
    selects    = "each output"
    mutes      = ["Music 1", "Music 2"]
    mute_depth = "full"
  }
  input "Urgent" {
    takes       = "line"
    sensitivity = "-6 dBV"
    impedance   = "10 kohm"
    balanced    = true
    connectors  = ["screw terminals"]
    triggers    = ["contact"]
    mutes       = ["Desk", "Music 1", "Music 2"]
  }
  input "Music" {
    quantity    = 2
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "10 kohm"
    connectors  = ["RCA pair"]
    stereo      = "left and right kept"
  }
  input "Fire mute" {
    takes      = "contact"
    connectors = ["screw terminals"]
    mutes      = ["Desk", "Music 1", "Music 2"]
    mutes_on   = "open"
  }
  output "Zone" {
    quantity  = 16
    level     = "4 dBu"
    impedance = "100 ohm"
    balanced  = true
  }
}

loudspeaker_model "house/lounge-30" {
  note             = "invented"
  kind             = "wall"
  rated_power      = "30 W"
  impedance        = "8 ohm"
  sensitivity      = "88 dB"
  coverage         = "100 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "70 Hz"
}

attenuator_model "house/room-12" {
  note      = "invented"
  rating    = "12 W"
  lowest    = "off"
  override  = "24 V relay"
  current   = "20 mA"
  cores     = 4
  terminals = "1 in, 2 out, 3 common, 4 and 5 relay"
}

microphone_model "house/zone-desk" {
  note      = "invented"
  connector = "RJ45"
  trigger   = "contact"
  selects   = 16
}

amplifier_model "house/line-240" {
  kind             = "power amplifier"
  note             = "invented"
  lowest_frequency = "50 Hz"
  mains_idle       = "20 W"
  mains_full       = "430 W"
  channel "Main" { rated_power = "240 W" }
  output "Line" {
    quantity = 4 # four pairs of terminals on the one channel
    channel  = "Main"
    volts    = "100 V"
  }
  input "Line in" {
    takes       = "line"
    sensitivity = "0 dBV"
    impedance   = "20 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
  }
}

mixer_model "house/pre-mixer" {
  note       = "invented"
  mains_idle = "10 W"
  mains_full = "12 W"
  relays     = "24 V, 0.5 A" # lifts volume controls while somebody speaks
  routing    = "one programme, all lines"
  input "Desk" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin plug only
    mutes       = ["Mic", "Bell", "Music"]
    mute_depth  = "full"
  }
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = ["signal"]
    mutes       = ["Music"]
    mute_depth  = "full"
  }
  input "Bell" {
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA"]
    triggers    = ["signal"]
    mutes       = ["Mic", "Music"]
    mute_depth  = "full"
  }
  input "Music" {
    takes       = "line"
    sensitivity = "-16 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
  input "Fire mute" {
    takes    = "contact"
    mutes    = ["Desk", "Mic", "Bell", "Music"]
    mutes_on = "open"
  }
  output "Main" {
    level     = "0 dBV"
    impedance = "100 ohm"
    balanced  = true
  }
}

cable_model "house/2 x 1.5 mm2" {
  size       = "1.5 mm2"
  note       = "invented"
  class      = 5
  cores      = 2
  insulation = "300 V"
  current    = "16 A"
}

cable_model "house/4 x 1.5 mm2" {
  size       = "1.5 mm2"
  note       = "invented"
  class      = 5
  cores      = 4
  insulation = "300 V"
  current    = "14 A"
}

cable_model "house/2 x 2.5 mm2" {
  size       = "2.5 mm2"
  note       = "invented"
  class      = 5
  cores      = 2
  insulation = "300 V"
  current    = "20 A"
}
