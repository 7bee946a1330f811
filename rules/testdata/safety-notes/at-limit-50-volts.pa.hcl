# A 50 V line is at the limit of extra-low voltage: open terminals pass.
system "Hall" { duty = "announcements" } # expect pass: height # expect pass: No level that harms # expect pass: no emergency function
amplifier "Rack" { rated_power = "120 W" } # expect pass: isolation # expect pass: earthing # expect pass: separation
line "Hall" { # expect pass: extra-low voltage
  amplifier = "Rack"
  output    = "50 V"
  loudspeaker "H" { tap = "6 W" }
}
safety { # expect pass: speaks of all
  line_terminals  = "open"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
