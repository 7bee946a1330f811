# A field report: on mixers whose inputs are set one by one to silence others and
# to be silenced, one half of the pair is often forgotten. In the canteen the
# microphone is a sender and a music input is not set to be muted; in the yard the
# music inputs are set to be muted and no input is set to mute them. Names and
# figures are invented.
system "Foundry Lane works" {
  reference = "FL-08"
  duty      = "announcements and music"
}
amplifier "Canteen mixer" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Mic 1" {
    takes      = "microphone"
    triggers   = ["signal"]
    mutes      = ["Aux 1", "Aux 2"]
    mute_depth = "full"
  }
  input "Aux 1" {
    takes           = "line"
    stereo          = "summed inside"
    triggers        = []
    muted_by_others = true
  }
  input "Aux 2" {
    takes           = "line"
    stereo          = "summed inside"
    triggers        = []
    muted_by_others = false # expect priority-wired fail error: Canteen desk does not silence Screen: Aux 2 of Canteen mixer is set not to be muted by others. && remedy (computed) Set Aux 2 of Canteen mixer to be muted by others.
  }
}
amplifier "Yard mixer" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = []
  }
  input "Aux 1" {
    takes           = "line"
    stereo          = "summed inside"
    triggers        = []
    muted_by_others = true
  }
}
line "Canteen" {
  amplifier = "Canteen mixer"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "10 m"
  loudspeaker "C" {
    quantity = 12
    tap      = "6 W"
    spacing  = "5 m"
    space    = "Canteen"
  }
}
line "Yard" {
  amplifier = "Yard mixer"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "40 m"
  loudspeaker "Y" {
    quantity = 6
    tap      = "10 W"
    spacing  = "15 m"
    space    = "Yard"
  }
}
microphone "Canteen desk" {
  into    = "Canteen mixer"
  input   = "Mic 1"
  trigger = "signal"
}
music "Player" {
  into     = "Canteen mixer"
  input    = "Aux 1"
  channels = "stereo"
}
music "Screen" {
  into     = "Canteen mixer"
  input    = "Aux 2"
  channels = "stereo"
}
microphone "Gate desk" {
  into    = "Yard mixer"
  input   = "Mic 1" # expect priority-wired fail error: Gate desk does not silence Yard radio: Mic 1 of Yard mixer does not mute Aux 1, which is set to be muted by others. && Where that can be set on the unit, let Mic 1 of Yard mixer mute Aux 1 too.
  trigger = "signal"
}
music "Yard radio" {
  into     = "Yard mixer"
  input    = "Aux 1"
  channels = "stereo"
}
space "Canteen" {
  length = "20 m"
  width  = "12 m"
  height = "3 m"
  noise  = "62 dBA"
}
space "Yard" {
  length   = "60 m"
  width    = "30 m"
  outdoors = true
  noise    = "65 dBA"
}
