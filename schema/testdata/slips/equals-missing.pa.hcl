amplifier "Rack" { rated_power "240 W" }
line "North" {
  amplifier "Rack"
  home_run 40 m
  cable "16/2" # flexible
  length
  containment =
}
space "Hall" {
  noise { "125 Hz" = "60 dB" }
}
