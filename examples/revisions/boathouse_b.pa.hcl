# Heronsreach boathouse, revision B
#
# A club house with a hall, a bar and a slipway. Revision C beside this one answers
# what was found here; `loudlint compare` tells what changed:
#
#     loudlint compare examples/revisions/boathouse_b.pa.hcl examples/revisions/boathouse_c.pa.hcl
#
# The place and all figures are invented.

system "Heronsreach boathouse" {
  reference    = "HB-3"
  revision     = "B"
  duty         = "announcements and music"
  wiring_rules = "Europe"
  polarity     = "brown to terminal 1, everywhere"
}

cable_model "boat/2 x 1.5 mm2" {
  note       = "invented"
  size       = "1.5 mm2"
  class      = 5
  cores      = 2
  insulation = "300 V"
}

amplifier "Rack" {
  rated_power = "120 W"
  high_pass   = "150 Hz"
  input "Mic" {
    takes      = "microphone"
    connectors = ["XLR 3"]
    triggers   = ["signal"]
    mutes      = ["Aux"]
    mute_depth = "full"
  }
  input "Aux" {
    takes      = "line"
    connectors = ["RCA pair"]
    triggers   = []
    stereo     = "summed inside"
  }
}

line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "boat/2 x 1.5 mm2"
  home_run  = "12 m"
  loudspeaker "H" {
    kind        = "wall"
    quantity    = 6
    rated_power = "10 W"
    taps_100V   = ["10 W", "6 W", "3 W"]
    tap         = "6 W"
    spacing     = "5 m"
  }
  loudspeaker "Stairs" {
    kind        = "wall"
    rated_power = "10 W"
    taps_100V   = ["10 W", "6 W", "3 W"]
    tap         = "4 W"
    leg         = "9 m"
  }
}

line "Slip" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "boat/2 x 1.5 mm2"
  home_run  = "260 m"
  loudspeaker "S" {
    kind        = "horn"
    quantity    = 4
    rated_power = "15 W"
    taps_100V   = ["15 W", "10 W", "5 W"]
    tap         = "15 W"
    spacing     = "25 m"
  }
}

microphone "Starter" {
  into      = "Rack"
  input     = "Mic"
  connector = "XLR 3"
  trigger   = "signal"
  lead      = "5 m"
  priority  = 1
}

music "Player" {
  into      = "Rack"
  input     = "Aux"
  channels  = "stereo"
  summed_by = "Y-lead"
  priority  = 2
}

safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  work_at_height  = "mobile platform, two people"
}
