system "Hall" { duty = "announcements" } # expect pass: height # expect pass: No level that harms # expect pass: no emergency function
amplifier "Rack" { rated_power = "120 W" } # expect pass: isolation # expect pass: earthing # expect pass: separation
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
safety { # expect pass: speaks of all
  line_terminals  = "open" # expect fail error: Line terminals stay open && 100 V && class ES2
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
