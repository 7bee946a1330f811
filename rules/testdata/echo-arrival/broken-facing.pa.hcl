# Two horns at the ends of a yard that look at each other.
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
  loudspeaker "West" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    space       = "Yard"
    position    = ["0 m", "10 m", "4 m"] # expect fail warning: comes 60 ms after && 29 % of "Yard" hears && Let "West" be 4.8 dB softer there
    aim         = "0 deg"
  }
  loudspeaker "East" {
    kind        = "horn"
    sensitivity = "104 dB"
    coverage    = "90 deg"
    tap         = "15 W"
    leg         = "60 m"
    space       = "Yard"
    position    = ["60 m", "10 m", "4 m"]
    aim         = "180 deg"
  }
}
space "Yard" {
  length       = "60 m"
  width        = "20 m"
  outdoors     = true
  listeners    = "standing"
  wanted_level = "60 dBA"
}
