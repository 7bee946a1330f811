# Brindlewick school
#
# Four lines on one line amplifier behind a pre-mixer: two floors of classrooms,
# the hall with a volume control of its own, corridors and yard. The office desk
# silences everything, the bell silences the music, and the fire panel silences
# all of it.
#
# One note stays, and is meant to: the music reaches the horns in the yard, which
# play it thinly. The school accepts that for the summer fete.
#
# The place and all figures are invented.

system "Brindlewick school" {
  reference    = "BW-07"
  revision     = "A"
  duty         = "announcements and music"
  wiring_rules = "Europe"
  polarity     = "brown to terminal 1, everywhere"
}
use { file = "house_catalogue.pa.hcl" }
mixer "Office mixer" {
  model = "house/pre-mixer"
  send "Main" {
    into  = "Line amp"
    input = "Line in"
    lead  = "2 m"
  }
}

amplifier "Line amp" {
  model     = "house/line-240" # one 240 W channel behind four pairs of terminals
  high_pass = "350 Hz"         # the yard horns' transformers take no bass
}

line "Ground floor" {
  amplifier   = "Line amp"
  output      = "Line 1"
  shared_with = ["nothing"]
  cable       = "house/2 x 1.5 mm2"
  home_run    = "22 m" # rack to the first device
  loudspeaker "G" {    # G 1 … G 16, two in each room, in walking order
    model    = "house/ceiling-6"
    quantity = 16
    tap      = "3 W"
    spacing  = "6 m" # cable, not plan distance
    space    = "Classroom"
  }
}
line "Upper floor" {
  like     = "Ground floor" # the same, except:
  output   = "Line 2"
  home_run = "31 m"
}
line "Hall" {
  amplifier     = "Line amp"
  output        = "Line 3"
  shared_with   = ["nothing"]
  cable         = "house/4 x 1.5 mm2"
  home_run      = "45 m"
  override_from = "Office mixer" # lifts the hall's volume control during a call
  attenuator "Hall level" {      # what stands inside the braces is behind it
    model = "house/hall-36"
    loudspeaker "H" {
      model    = "house/wall-10"
      quantity = 5
      tap      = "6 W"
      leg      = "6 m"
      spacing  = "5 m"
      space    = "Hall"
      position = ["2 m", "0 m"]  # H 1, measured along the length and the width
      to       = ["16 m", "0 m"] # H 5
      height   = "3 m"
    }
  }
}
line "Corridors and yard" {
  amplifier   = "Line amp"
  output      = "Line 4"
  shared_with = ["nothing"]
  cable       = "house/2 x 1.5 mm2"
  home_run    = "12 m"
  loudspeaker "C" {
    model    = "house/ceiling-6"
    quantity = 10
    tap      = "1.5 W"
    spacing  = "8 m"
    space    = "Corridors"
  }
  branch "Yard tee" {
    leg = "4 m" # C 10 to the tee
    loudspeaker "Y" {
      model    = "house/horn-15"
      quantity = 4
      tap      = "10 W"
      leg      = "18 m" # tee to Y 1
      spacing  = "15 m"
      space    = "Yard"
      height   = "5 m"
      position = ["22 m", "0 m"] # Y 1, under the eaves; close enough together for no echo
      to       = ["38 m", "0 m"] # Y 4
      aim      = "90 deg"
      tilt     = "10 deg"
    }
  }
}
microphone "Office desk" {
  model     = "house/desk"
  into      = "Office mixer"
  input     = "Desk"
  connector = "DIN 5"
  lead      = "3 m"
  priority  = 1 # 1 is the highest
  lines     = "all"
  stands_in = "Office"
}
message "Class change" {
  into       = "Office mixer"
  input      = "Bell"
  level      = "-10 dBV"
  impedance  = "600 ohm"
  connector  = "RCA"
  trigger    = "signal"
  started_by = "clock contact"
  priority   = 2
  lines      = "all"
}
microphone "Hall handheld" {
  model     = "house/handheld"
  into      = "Office mixer"
  input     = "Mic"
  trigger   = "signal"
  lead      = "8 m"
  priority  = 3
  stands_in = "Office"
}
music "Player" {
  into      = "Office mixer"
  input     = "Music"
  connector = "RCA pair"
  channels  = "stereo"
  summed_by = "input"
  level     = "-10 dBV"
  impedance = "1 kohm"
  priority  = 4
}
mute_link "Fire panel" {
  into        = "Office mixer"
  input       = "Fire mute"
  contact     = "opens in alarm" # so that a cut cable mutes too
  mutes       = "all"
  latching    = true
  restored_by = "panel reset"
  joint       = "fixed box, clamped"
  monitored   = true
  tested      = "with the panel, at handover"
}
space "Classroom" {
  alike             = 16 # sixteen rooms like this one
  length            = "9 m"
  width             = "7 m"
  height            = "2.7 m"
  noise             = "50 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "0.6 s"
}
space "Hall" {
  length            = "18 m"
  width             = "10 m"
  height            = "5 m"
  noise             = "58 dBA"
  wanted_over_noise = "10 dB"
  reverberation     = "1.1 s"
}
space "Corridors" {
  length            = "80 m"
  width             = "2.4 m"
  height            = "3 m"
  noise             = "62 dBA"
  listeners         = "standing"
  wanted_over_noise = "6 dB"
  reverberation     = "0.8 s"
}
space "Yard" {
  length            = "60 m"
  width             = "35 m"
  outdoors          = true
  noise             = "65 dBA"
  listeners         = "standing"
  wanted_over_noise = "6 dB"
}
space "Office" { height = "2.7 m" }
reading "Upper floor first fix" {
  line                   = "Upper floor"
  impedance              = "198 ohm"
  frequency              = "1 kHz"
  instrument             = "impedance meter"
  amplifier_disconnected = true
}
