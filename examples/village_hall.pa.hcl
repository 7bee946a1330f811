# Tarnwhistle village hall
#
# A hall, a foyer and a kitchen on one 60 W mixer amplifier. The committee's
# microphone silences the music; the music player has two channels and the
# amplifier one. Nothing is left open and nothing fails: this is what a design
# looks like when it is ready to order.
#
# The place and all figures are invented.

system "Tarnwhistle village hall" {
  reference    = "TW-01"
  revision     = "B"
  duty         = "announcements and music"
  wiring_rules = "Europe"
  polarity     = "brown to terminal 1, everywhere"
}

# What the data sheets say. A firm keeps these in a catalogue of its own; here
# they stand in the design so that it can be read in one piece.

amplifier_model "hall/mixer-60" {
  kind      = "mixer amplifier"
  note      = "invented"
  high_pass = "130 Hz" # keeps bass away from the transformers
  channel "Main" { rated_power = "60 W" }
  output "100 V" {
    channel = "Main"
    volts   = "100 V"
  }
  input "Mic 1" {
    takes       = "microphone"
    sensitivity = "-60 dBV" # gives rated output at full gain
    impedance   = "2 kohm"
    connectors  = ["DIN 5", "XLR 3"]
    triggers    = ["contact"]
    needs_cores = 5 # the contact comes through the 5-pin plug only
    mutes       = ["Aux"]
    mute_depth  = "full"
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

loudspeaker_model "hall/wall-10" {
  kind             = "wall"
  note             = "invented"
  rated_power      = "10 W"
  taps_100V        = ["10 W", "6 W", "3 W"]
  sensitivity      = "91 dB"
  coverage         = "120 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "110 Hz"
}

loudspeaker_model "hall/ceiling-6" {
  kind             = "ceiling"
  note             = "invented"
  rated_power      = "6 W"
  taps_100V        = ["6 W", "3 W", "1.5 W"]
  sensitivity      = "90 dB"
  coverage         = "130 deg"
  coverage_at      = "2 kHz"
  lowest_frequency = "130 Hz"
}

cable_model "hall/2 x 1.5 mm2" {
  note       = "invented"
  size       = "1.5 mm2"
  class      = 5
  cores      = 2
  insulation = "300 V"
}

# The system.

amplifier "Rack" { model = "hall/mixer-60" }

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "hall/2 x 1.5 mm2"
  home_run  = "14 m" # rack to the first loudspeaker
  loudspeaker "H" {  # H 1 … H 6, along both long walls in walking order
    model    = "hall/wall-10"
    quantity = 6
    tap      = "6 W"
    spacing  = "5 m" # cable, not plan distance
    space    = "Hall"
    height   = "3 m"
  }
}

line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "hall/2 x 1.5 mm2"
  home_run  = "9 m"
  loudspeaker "F" {
    model    = "hall/ceiling-6"
    quantity = 3
    tap      = "3 W"
    spacing  = "4 m"
    space    = "Foyer"
  }
  loudspeaker "Kitchen" {
    model = "hall/ceiling-6"
    tap   = "3 W"
    leg   = "7 m" # F 3 to the kitchen
    space = "Kitchen"
  }
}

microphone "Committee" {
  into            = "Rack"
  input           = "Mic 1"
  connector       = "DIN 5" # carries the contact that silences the music
  trigger         = "contact"
  lead            = "4 m"
  level           = "-54 dBV"
  impedance       = "200 ohm"
  priority        = 1
  stands_in       = "Hall"
  talker_distance = "10 cm"
}

music "Player" {
  into      = "Rack"
  input     = "Aux"
  channels  = "stereo"
  summed_by = "input" # the input adds left and right
  level     = "-10 dBV"
  impedance = "1 kohm"
  priority  = 2
}

space "Hall" {
  length            = "17 m"
  width             = "9 m"
  height            = "4.5 m"
  listeners         = "seated"
  noise             = "52 dBA"
  wanted_over_noise = "12 dB"
  reverberation     = "1 s"
}

space "Foyer" {
  length            = "11 m"
  width             = "4 m"
  height            = "2.7 m"
  listeners         = "standing"
  noise             = "55 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "0.7 s"
}

space "Kitchen" {
  area              = "14 m2"
  height            = "2.7 m"
  listeners         = "standing"
  noise             = "60 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "0.6 s"
}

safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  work_at_height  = "mobile platform, two people"
}
