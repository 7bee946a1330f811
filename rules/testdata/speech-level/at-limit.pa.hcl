# 90 dB + 10 lg 10 W − 20 lg of the way, √((12 − 0.05)² + 1²) = 11.99 m: 78.4 dBA at
# full output, 68.4 dBA of average speech, which is what is wanted.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Court" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 16 mm2"
  home_run  = "0 m"
  loudspeaker "P" {
    kind        = "pendant"
    sensitivity = "90 dB"
    coverage    = "360 deg"
    tap         = "10 W"
    space       = "Court"
    position    = ["12 m", "0.05 m", "2.2 m"]
  }
}
space "Court" { # a strip 10 m away, so small that it is as loud everywhere # expect pass: reaches 68.4 dBA
  length       = "0.1 m"
  width        = "0.1 m"
  outdoors     = true
  listeners    = "seated"
  humidity     = "0 %"
  wanted_level = "68.4 dBA"
}
