# The block speaks of the terminals alone; ceiling loudspeakers, a rack and a
# loud hall call for more.
system "Hall" { duty = "announcements" } # expect pass: No level # expect pass: no emergency function
amplifier "Rack" { rated_power = "120 W" } # expect pass: isolation # expect pass: earthing # expect pass: separation
line "Hall" { # expect pass: nothing stated contradicts covering
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { # expect pass: Work at height
    tap    = "6 W"
    space  = "Hall"
    height = "4 m"
  }
}
space "Hall" {
  wanted_level = "92 dBA"
}
safety { # expect fail note: leaves out isolation before work, earthing, separation from mains wiring, work at height and the highest level
  line_terminals = "covered"
}
