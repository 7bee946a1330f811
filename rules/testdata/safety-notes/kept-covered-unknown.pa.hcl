# Covered terminals are right whatever the line carries.
system "Works" { duty = "announcements" } # expect pass: No level that harms hearing is # expect pass: Nothing in the design says that # expect pass: The duty is announcements: no emergency
amplifier "Rack" { rated_power = "120 W" } # expect pass: Nothing stated contradicts earthing of mains # expect pass: Nothing stated contradicts isolation of mains # expect pass: Nothing stated contradicts separation of mains
line "Halls" {
  amplifier = "Rack"
  loudspeaker "H" { tap = "6 W" }
}
safety { # expect pass: The safety block speaks of all
  line_terminals  = "covered" # expect pass: What Halls carries is not known;
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
