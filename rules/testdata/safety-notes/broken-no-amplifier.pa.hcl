# No amplifier is chosen yet, but the line says what it will carry.
system "Hall" { duty = "announcements" } # expect pass: No level that harms hearing is # expect pass: Nothing in the design says that # expect pass: No mains equipment is in the # expect pass: The duty is announcements: no emergency
line "Hall" {
  output = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
safety { line_terminals = "open" } # expect pass: The safety block speaks of all # expect fail error: Line terminals stay open, and the lines carry 100 V
