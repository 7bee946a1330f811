# The like line has no cable of its own: the remedy gives it one and leaves the other line alone.
amplifier "Rack" { rated_power = "480 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2" # expect pass: 1.48 % of the voltage
  home_run  = "16 m"
  loudspeaker "Horn" { tap = "120 W" }
}
line "Far" { # expect fail warning: line "Far" takes 12.3 % && remedy (proved) Use 2 x 0.75 mm2
  like     = "Yard"
  home_run = "150 m"
}
