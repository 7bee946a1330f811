# The cable is known, the line's voltage is not.
system "Hall" { duty = "announcements" }
amplifier "Rack" { rated_power = "120 W" }
cable_model "own/bell wire" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "60 V"
}
line "Hall" { # expect open: missing output, with its voltage or its ohms of line "Hall"
  amplifier = "Rack"
  cable     = "own/bell wire"
  loudspeaker "H" { tap = "6 W" }
}
