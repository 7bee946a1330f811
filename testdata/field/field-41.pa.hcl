# A field report: with new players in the rack everything they play is loud and
# distorted, while the microphones are fine. The mixer amplifier has one kind of
# socket for microphones and players, and these inputs are still set for
# microphones: the players bring 46 dB more than they need. A pad of 20 to 30 dB,
# or the line position, is what is missing. Names and figures are invented.
system "Harrow Lane Sports Hall" {
  reference = "HL-03"
  duty      = "announcements and music"
}
amplifier "Rack" {
  rated_power = "240 W"
  routing     = "one programme, all lines"
  input "Input 1" {
    setting     = "mic"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    triggers    = ["signal"]
    mutes       = ["Input 2", "Input 3"]
    mute_depth  = "-30 dB"
  }
  input "Input 2" {
    setting     = "mic"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    triggers    = []
    stereo      = "summed inside"
  }
  input "Input 3" {
    setting     = "line"
    pad         = "-30 dB"
    sensitivity = "-60 dBV"
    impedance   = "10 kohm"
    triggers    = []
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "18 m"
  loudspeaker "H" {
    quantity = 10
    tap      = "15 W"
    spacing  = "6 m"
    space    = "Hall"
  }
}
microphone "Coach" {
  into      = "Rack"
  input     = "Input 1" # expect gain-range pass: Coach has 6 dB in hand at Input 1 of Rack
  level     = "-54 dBV"
  impedance = "200 ohm"
  trigger   = "signal"
}
music "Class player" {
  into     = "Rack"
  input    = "Input 2" # expect gain-range fail warning: Class player comes to Input 2 of Rack with 50 dB more than rated output needs && Switch in a pad of 20 dB at Input 2 of Rack, or its line position if that is as much: 30 dB are then in hand
  level    = "-10 dBV"
  channels = "stereo"
}
music "Scoreboard" {
  into     = "Rack"
  input    = "Input 3" # expect gain-range pass: Scoreboard has 20 dB in hand at Input 3 of Rack
  level    = "-10 dBV"
  channels = "mono"
}
space "Hall" {
  length = "40 m"
  width  = "20 m"
  height = "8 m"
  noise  = "65 dBA"
}
