# A horn of 30 W two metres from a desk: wanted is reached, ears are not asked. And a
# cabinet whose place is not said: what is short there is a note.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "Gate" {
    kind        = "horn"
    sensitivity = "108 dB"
    coverage    = "60 deg"
    tap         = "30 W"
    space       = "Gate"
    position    = ["0 m", "2 m", "2 m"]
    aim         = "0 deg"
  }
  loudspeaker "Hut" {
    kind        = "wall"
    sensitivity = "90 dB"
    coverage    = "120 deg"
    tap         = "1.5 W"
    leg         = "10 m"
    height      = "2.5 m"
    space       = "Hut"
  }
}
space "Gate" { # expect pass: reaches 91.4 dBA # expect fail warning: 121.5 dBA reach somebody && Take 11.5 dB off the loudspeakers nearest to people
  length       = "12 m"
  width        = "4 m"
  outdoors     = true
  listeners    = "standing"
  wanted_level = "75 dBA"
}
space "Hut" {
  length        = "12 m"
  width         = "5 m"
  height        = "3 m"
  wanted_level  = "88 dBA" # expect fail note: 14.4 dB short && reaches 73.6 dBA && Choose loudspeakers that are 14.4 dB more sensitive
  reverberation = "0.5 s"
}
