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
    takes       = "microphone"
    sensitivity = "-56 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin plug only
    mutes       = ["Mic 2", "Aux 1", "Aux 2"]
    mute_depth  = "full"
  }
  input "Mic 2" {
    takes       = "microphone"
    sensitivity = "-56 dBV"
    impedance   = "2 kohm"
    balanced    = true
    connectors  = ["XLR 3"]
    triggers    = []
  }
  input "Aux 1" {
    takes       = "line"
    sensitivity = "-12 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA pair"]
    triggers    = []
    stereo      = "summed inside"
  }
  input "Aux 2" {
    takes       = "line"
    sensitivity = "-12 dBV"
    impedance   = "22 kohm"
    connectors  = ["RCA"]
    triggers    = ["signal"]
    mutes       = ["Aux 1"]
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
