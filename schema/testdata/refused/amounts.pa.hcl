# Figures that cannot be.
line "North" {
  home_run = 40
  ring_leg = "40"
  length   = "1,5 m"
  loudspeaker "N" {
    tap         = "6 V"
    leg         = "6,000 m"
    height      = "-3 m"
    series_resistance = "1e3 ohm"
    sensitivity = "90 dBA"
    taps_100V   = "6 W"
    taps_70V    = ["3", 2, "1.5 Wt"]
    position    = ["2 m"]
    to          = ["2 m", "3 m"]
    impedance_at = { "125 Hz" = "8 ohm", "125 Hz" = "9 ohm", low = "3 ohm" }
    sensitivity_at = {}
    aim         = 1 / 2
    tilt        = 1 / 0
    coverage    = 1e30
    polarity    = "Normal"
    kind        = "ceilling"
  }
  attenuator "V" {
    setting = "6 dB"
    lowest  = "Off"
    cores   = "four"
    loudspeaker "O" {}
  }
  monitored  = "yes"
  shared_with = ["main"]
}
given {
  bay   = 5
  text  = "5"
  list  = [1, 2]
  loop  = given.loop + 1
  small = 1e-99999999
}
space "Hall" {
  alike   = 2.5
  length  = "${given.bax} m"
  width   = "${given.bay + given.text} m"
  height  = given.bay
  outline = [["0 m", "0 m"], ["9 m"], 3]
  noise   = "60 dB"
  listeners = standing
}
reading "Meter" {
  impedance = "1.21"
  frequency = "1.21"
}
