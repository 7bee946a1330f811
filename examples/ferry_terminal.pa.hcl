# Gullmantle ferry terminal
#
# Two halls, a car lane and a long pier, on two amplifiers. The first draft of
# the design has eight faults that are met in practice, one of each kind. Run
#
#     loudlint check examples/ferry_terminal.pa.hcl
#
# and read them; each finding says what to change. In the order of this file:
#
#   1  the microphone's plug has no contacts for silencing the music
#   2  the player's two outputs are joined by a bare Y-lead
#   3  two players share one input
#   4  the departure hall asks for more than its amplifier has
#   5  a tap that the loudspeaker does not have
#   6  a loudspeaker left on its 70 V tap on the 100 V line
#   7  the pier line loses too much in its cable
#   8  the line terminals stay open
#
# What is heard is worked out too, in the halls and on the quay: loud enough, even
# enough, clear enough. How clear it is in the open nobody can work out beforehand.
#
# The place and all figures are invented.

system "Gullmantle ferry terminal" {
  reference    = "GM-12"
  revision     = "A"
  duty         = "announcements and music"
  wiring_rules = "Europe"
  polarity     = "brown to terminal 1, everywhere"
}

use { file = "house_catalogue.pa.hcl" }

amplifier "Halls amp" {
  model     = "house/mixer-240"
  high_pass = "120 Hz" # for the transformers of the ceiling loudspeakers
  send "Line out" {
    into  = "Pier amp"
    input = "Line in"
    lead  = "3 m"
  }
}

amplifier "Pier amp" {
  model     = "house/line-480"
  high_pass = "350 Hz" # for the horns
}

microphone "Purser" {
  model           = "house/desk"
  into            = "Halls amp"
  input           = "Mic 1"
  connector       = "XLR 3" # fault 1: three pins carry the sound and no contact
  lead            = "6 m"
  priority        = 1
  lines           = "all"
  stands_in       = "Departure hall"
  position        = ["2 m", "11 m"] # behind the counter, along the length and the width of the hall
  talker_distance = "8 cm"
}

music "Hall player" {
  into      = "Halls amp"
  input     = "Aux 2"
  connector = "RCA"
  channels  = "stereo"
  summed_by = "Y-lead" # fault 2: left and right drive each other
  level     = "-10 dBV"
  priority  = 2
  lines     = ["Departure hall", "Arrival hall"]
}

music "Tourist office" {
  into     = "Halls amp"
  input    = "Aux 2" # fault 3: the hall player is plugged in there
  channels = "mono"
  level    = "-10 dBV"
  priority = 2
  lines    = ["Arrival hall"]
}

line "Departure hall" {
  amplifier = "Halls amp"
  output    = "Zone 1"
  cable     = "house/2 x 2.5 mm2"
  home_run  = "35 m"
  loudspeaker "D" { # fault 4: 18 × 6 W here, and two zones more on the same channel
    model    = "house/wall-10"
    quantity = 18
    tap      = "6 W"
    spacing  = "6 m"
    space    = "Departure hall"
    height   = "4 m"
  }
}

line "Arrival hall" {
  amplifier = "Halls amp"
  output    = "Zone 2"
  cable     = "house/2 x 1.5 mm2"
  home_run  = "28 m"
  loudspeaker "A" {
    model    = "house/ceiling-6"
    quantity = 14
    tap      = "6 W"
    spacing  = "5 m"
    space    = "Arrival hall"
  }
  loudspeaker "Customs" {
    model = "house/ceiling-6"
    tap   = "4 W" # fault 5: the transformer has 6, 3, 1.5 and 0.75 W
    leg   = "11 m"
    space = "Arrival hall"
  }
}

line "Car lane" {
  amplifier = "Halls amp"
  output    = "Zone 3"
  cable     = "house/2 x 2.5 mm2"
  home_run  = "60 m"
  loudspeaker "C" {
    model    = "house/wall-10"
    quantity = 4
    tap      = "10 W"
    spacing  = "20 m"
    space    = "Car lane"
    height   = "5 m"
    position = ["10 m", "0 m"] # C 1, on poles along the wall of the hall
    to       = ["70 m", "0 m"] # C 4
    aim      = "90 deg"        # across the lane
  }
  loudspeaker "Toll booth" {
    model    = "house/wall-10"
    tap      = "5 W"
    tap_for  = "70 V" # fault 6: on 100 V it takes twice its marking
    leg      = "18 m"
    space    = "Car lane"
    position = ["88 m", "0 m", "3 m"]
    aim      = "90 deg"
  }
}

line "Pier" {
  amplifier = "Pier amp"
  output    = "100 V"
  cable     = "house/2 x 1.5 mm2" # fault 7: too thin for so long a way
  home_run  = "180 m"
  loudspeaker "P" {
    model    = "house/horn-15"
    quantity = 16
    tap      = "10 W"
    spacing  = "15 m"
    space    = "Pier"
    height   = "5 m"
    position = ["7 m", "0 m"]   # P 1, on lamp posts along the edge
    to       = ["232 m", "0 m"] # P 16
    aim      = "90 deg"         # across the pier and down
    tilt     = "30 deg"
  }
}

space "Departure hall" { # the concourse
  length            = "48 m"
  width             = "22 m"
  height            = "6 m"
  listeners         = "standing"
  noise             = { "125 Hz" = "66 dB", "250 Hz" = "65 dB", "500 Hz" = "63 dB", "1 kHz" = "59 dB", "2 kHz" = "55 dB", "4 kHz" = "50 dB", "8 kHz" = "43 dB" }
  wanted_over_noise = "10 dB"
  surface "Floor" {
    area     = "1056 m2"
    material = "linoleum on concrete"
  }
  surface "Ceiling" {
    area     = "1056 m2"
    material = "acoustic ceiling tiles"
  }
  surface "Walls" {
    area       = "590 m2" # slatted panels over mineral wool
    absorption = { "125 Hz" = 0.2, "250 Hz" = 0.45, "500 Hz" = 0.6, "1 kHz" = 0.6, "2 kHz" = 0.5, "4 kHz" = 0.4 }
  }
  surface "Windows" {
    area     = "250 m2"
    material = "heavy plate glass"
  }
}

space "Arrival hall" {
  length            = "30 m"
  width             = "16 m"
  height            = "3 m"
  listeners         = "standing"
  noise             = "62 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = { "125 Hz" = "1.1 s", "500 Hz" = "0.8 s", "2 kHz" = "0.7 s", "8 kHz" = "0.5 s" }
}

space "Car lane" {
  length            = "90 m"
  width             = "14 m"
  listeners         = "seated" # in cars, windows down
  outdoors          = true
  noise             = "62 dBA"
  wanted_over_noise = "6 dB"
}

space "Pier" {
  length            = "240 m"
  width             = "8 m"
  listeners         = "standing"
  outdoors          = true
  noise             = "68 dBA"
  wanted_over_noise = "10 dB"
  temperature       = "12 C"
  humidity          = "80 %"
}

safety {
  line_terminals  = "open" # fault 8: passengers' luggage leans on the rack
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  work_at_height  = "mobile platform, two people"
}
