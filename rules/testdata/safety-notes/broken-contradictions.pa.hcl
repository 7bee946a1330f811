system "Hall" { duty = "announcements" } # expect pass: height # expect pass: no emergency function
amplifier "Rack" { rated_power = "120 W" }
line "Hall" { # expect pass: nothing stated contradicts covering
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
safety { # expect fail note: leaves out the line terminals, which
  isolation       = "none"  # expect fail error: without isolation
  earthed         = false   # expect fail error: not earthed
  mains_separated = false   # expect fail error: not kept apart
  highest_level   = "118 dBA" # expect fail error: exposed to 118 dBA
}
