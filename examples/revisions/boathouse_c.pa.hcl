# Heronsreach boathouse, revision C
#
# What changed since revision B: the music is summed inside, the stairs have a tap
# that exists, the slipway line is called by its full name and its horns are turned
# down; the bar was added.
#
# The place and all figures are invented.

system "Heronsreach boathouse" {
  reference    = "HB-3"
  revision     = "C"
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
    tap         = "3 W"
    leg         = "9 m"
  }
}

line "Slipway" {
  formerly  = "Slip"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "boat/2 x 1.5 mm2"
  home_run  = "260 m"
  loudspeaker "S" {
    kind        = "horn"
    quantity    = 4
    rated_power = "15 W"
    taps_100V   = ["15 W", "10 W", "5 W"]
    tap         = "10 W"
    spacing     = "25 m"
  }
}

line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "boat/2 x 1.5 mm2"
  home_run  = "18 m"
  loudspeaker "B" {
    kind        = "ceiling"
    quantity    = 6
    rated_power = "6 W"
    taps_100V   = ["6 W", "3 W"]
    tap         = "6 W"
    spacing     = "4 m"
  }
}

microphone "Race starter" {
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
  summed_by = "input"
  priority  = 2
}

safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  work_at_height  = "mobile platform, two people"
}

deviation "programme-fit" {
  line        = "Slipway"
  reason      = "Music at the water is for regatta days only; horns carry over the wind"
  accepted_by = "Club committee"
  until       = "2030-12-31"
}
