# A 100 V line, and loudspeakers in ohms on cable of which nothing is said.
amplifier "Rack" { rated_power = "120 W" }
amplifier "Stage" {
  rated_power = "200 W"
  output "Left" { lowest_impedance = "8 ohm" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "typical/2 x 1.5 mm2" # expect pass: is rated 300 V
  loudspeaker "H" { tap = "6 W" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 2.5 mm2"
  loudspeaker "L" { impedance = "8 ohm" }
}
