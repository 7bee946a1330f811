# Loud enough by direct sound alone, so that nobody has to know the reverberation time;
# with noise in octaves; in the least supplied of four rooms; and behind an attenuator
# that an announcement lifts.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "R" {
    kind        = "ceiling"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 8
    spacing     = "5 m"
    space       = "Room"
  }
  attenuator "Bar" {
    leg      = "10 m"
    rating   = "36 W"
    override = "24 V relay"
    setting  = "-20 dB"
    loudspeaker "B" {
      kind        = "ceiling"
      sensitivity = "90 dB"
      coverage    = "120 deg"
      tap         = "6 W"
      leg         = "1 m"
      quantity    = 2
      spacing     = "4 m"
      space       = "Bar"
    }
  }
}
space "Room" { # expect pass: reaches 75.5 dBA over 95 % of the floor in the least supplied
  alike             = 4
  length            = "9 m"
  width             = "6 m"
  height            = "2.8 m"
  noise             = { "125 Hz" = "60 dB", "250 Hz" = "55 dB", "500 Hz" = "52 dB", "1 kHz" = "48 dB", "2 kHz" = "44 dB", "4 kHz" = "40 dB", "8 kHz" = "35 dB" }
  wanted_over_noise = "15 dB"
}
space "Bar" { # expect pass: reaches 77.7 dBA
  length            = "8 m"
  width             = "4 m"
  height            = "3 m"
  listeners         = "standing"
  noise             = "66 dBA"
  wanted_over_noise = "10 dB"
}
