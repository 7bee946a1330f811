# Three lines on cable of which nothing is said: one answer for the job.
system "Hall" { duty = "announcements" } # expect open: missing insulation voltage of the cable of cable "2 x 1.5 mm2": a cable_model with insulation = "300 V" && missing insulation voltage of the cable of cable_model "own/thin": insulation = "300 V" && missing cable of line "Yard"
amplifier "Rack" { rated_power = "120 W" }
cable_model "own/thin" {
  size  = "0.75 mm2"
  cores = 2
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  loudspeaker "H" { tap = "6 W" }
}
line "Foyer" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/thin"
  loudspeaker "F" { tap = "6 W" }
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" { tap = "6 W" }
}
