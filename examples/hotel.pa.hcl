# Saltmarrow hotel
#
# Twelve bedroom floors and a lounge on one matrix. Every room has a volume
# control with a 24 V relay, so that a page is heard where the control is turned
# off; reception pages any floor without the others; the fire panel silences the
# lounge and the rooms; batteries carry the system through the night. Floors are
# written once and then "like" the first one.
#
# The place and all figures are invented.

system "Saltmarrow hotel" {
  reference    = "SM-02"
  revision     = "D"
  duty         = "announcements and music"
  wiring_rules = "Europe"
  polarity     = "brown to terminal 1, everywhere"
}
use { file = "house_catalogue.pa.hcl" }
mixer "Matrix" {
  model = "house/matrix-16"
  send "Zone" { # Zone 1 … 4 into Channel 1 … 4
    quantity = 4
    into     = "Amp A"
    input    = "Channel"
  }
  send "Zone" {
    first    = 5
    quantity = 4
    into     = "Amp B"
    input    = "Channel"
  }
  send "Zone" {
    first    = 9
    quantity = 4
    into     = "Amp C"
    input    = "Channel"
  }
  send "Zone 13" {
    into     = "Lounge amp"
    input    = "Left"
    channels = "left"
  }
  send "Zone 14" {
    into     = "Lounge amp"
    input    = "Right"
    channels = "right"
  }
}
amplifier "Amp A" {
  model     = "house/line-4x120"
  high_pass = "120 Hz" # what the ceiling loudspeakers take
}
amplifier "Amp B" {
  model     = "house/line-4x120"
  high_pass = "120 Hz" # what the ceiling loudspeakers take
}
amplifier "Amp C" {
  model     = "house/line-4x120"
  high_pass = "120 Hz" # what the ceiling loudspeakers take
}
amplifier "Lounge amp" { model = "house/stereo-2x50" }
line "Floor 1" {
  amplifier     = "Amp A"
  output        = "Channel 1"
  shared_with   = ["nothing"]
  cable         = "house/4 x 1.5 mm2"
  home_run      = "18 m"
  override_from = "Matrix" # what switches the room relays during a page
  loudspeaker "Corridor" {
    model    = "house/ceiling-6"
    quantity = 5
    tap      = "1.5 W"
    leg      = "2 m"
    spacing  = "9 m"
    space    = "Corridor"
  }
  attenuator "Room" { # Room 1 … Room 14, each with its own bed and bath
    quantity = 14
    model    = "house/room-12"
    leg      = "3 m"
    spacing  = "4 m"
    loudspeaker "Bed" {
      model = "house/ceiling-6"
      tap   = "3 W"
      leg   = "4 m"
      space = "Bedroom"
    }
    loudspeaker "Bath" {
      model = "house/ceiling-6"
      tap   = "0.75 W"
      leg   = "3 m"
      space = "Bathroom"
    }
  }
}
line "Floor 2" {
  like     = "Floor 1"
  output   = "Channel 2"
  home_run = "21 m"
}
line "Floor 3" {
  like     = "Floor 1"
  output   = "Channel 3"
  home_run = "24 m"
}
line "Floor 4" {
  like     = "Floor 1"
  output   = "Channel 4"
  home_run = "27 m"
}
line "Floor 5" {
  like      = "Floor 1"
  amplifier = "Amp B"
  home_run  = "30 m"
}
line "Floor 6" {
  like      = "Floor 1"
  amplifier = "Amp B"
  output    = "Channel 2"
  home_run  = "33 m"
}
line "Floor 7" {
  like      = "Floor 1"
  amplifier = "Amp B"
  output    = "Channel 3"
  home_run  = "36 m"
}
line "Floor 8" {
  like      = "Floor 1"
  amplifier = "Amp B"
  output    = "Channel 4"
  home_run  = "39 m"
}
line "Floor 9" {
  like      = "Floor 1"
  amplifier = "Amp C"
  home_run  = "42 m"
}
line "Floor 10" {
  like      = "Floor 1"
  amplifier = "Amp C"
  output    = "Channel 2"
  home_run  = "45 m"
}
line "Floor 11" {
  like      = "Floor 1"
  amplifier = "Amp C"
  output    = "Channel 3"
  home_run  = "48 m"
}
line "Floor 12" {
  like      = "Floor 1"
  amplifier = "Amp C"
  output    = "Channel 4"
  home_run  = "51 m"
}
line "Lounge left" {
  amplifier   = "Lounge amp"
  output      = "Left"
  shared_with = ["nothing"]
  cable       = "house/2 x 2.5 mm2"
  wiring      = "parallel"
  loudspeaker "LL" {
    model    = "house/lounge-30"
    quantity = 2
    leg      = "9 m"
    spacing  = "5 m"
    space    = "Lounge"
    height   = "2.5 m"
  }
}
line "Lounge right" {
  like   = "Lounge left"
  output = "Right"
}
group "Bedroom floors" { lines = ["Floor 1", "Floor 2", "Floor 3", "Floor 4", "Floor 5", "Floor 6", "Floor 7", "Floor 8", "Floor 9", "Floor 10", "Floor 11", "Floor 12"] }
microphone "Reception" {
  model      = "house/zone-desk"
  into       = "Matrix"
  input      = "Desk"
  priority   = 2
  lines      = "all"
  selectable = true # can page any line without the others
}
message "General call" {
  into     = "Matrix"
  input    = "Urgent"
  level    = "0 dBV"
  trigger  = "contact"
  priority = 1
  lines    = "all"
}
music "Rooms player" {
  into      = "Matrix"
  input     = "Music 1"
  channels  = "stereo"
  summed_by = "output" # the matrix sums for each mono zone
  level     = "-10 dBV"
  lines     = ["Bedroom floors"]
}
music "Lounge player" {
  into     = "Matrix"
  input    = "Music 2"
  channels = "stereo"
  level    = "-10 dBV"
  lines    = ["Lounge left", "Lounge right"]
}
mute_link "Fire panel" {
  into        = "Matrix"
  input       = "Fire mute"
  contact     = "opens in alarm" # so that a cut cable silences too
  mutes       = ["Rooms player", "Lounge player", "Reception"]
  latching    = true
  restored_by = "panel reset"
  monitored   = true
  tested      = "with the panel, at handover"
}
supply "Standby battery" {
  feeds        = ["Matrix", "Amp A", "Amp B", "Amp C"]
  battery      = "24 V"
  capacity     = "150 Ah"
  standby      = "24 h"
  announcement = "30 min"
  ageing       = 1.25
  relays       = "24 V, 4 A" # feeds the attenuators' override relays
}
space "Bedroom" {
  alike             = 168
  length            = "5.5 m"
  width             = "3.4 m"
  height            = "2.5 m"
  noise             = "42 dBA"
  wanted_over_noise = "15 dB"
  reverberation     = "0.4 s"
}
space "Bathroom" {
  alike             = 168
  area              = "4 m2"
  height            = "2.3 m"
  noise             = "55 dBA"
  listeners         = "standing"
  wanted_over_noise = "10 dB"
  reverberation     = "0.6 s"
}
space "Corridor" {
  alike             = 12
  length            = "44 m"
  width             = "1.8 m"
  height            = "3 m"
  noise             = "45 dBA"
  listeners         = "standing"
  wanted_over_noise = "10 dB"
  reverberation     = "0.6 s"
}
space "Lounge" {
  length            = "16 m"
  width             = "11 m"
  height            = "3.2 m"
  noise             = "60 dBA"
  wanted_over_noise = "6 dB"
  reverberation     = "0.8 s"
}
