# The level that the machine hall asks for is above the highest that is stated.
system "Works" { duty = "announcements" } # expect pass: height # expect pass: no emergency function # expect pass: No mains
line "Hall" { # expect pass: The lines carry 100 V
  output = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
space "Machines" {
  wanted_level = "98 dBA"
}
safety { # expect pass: speaks of all
  line_terminals = "covered"
  highest_level  = "95 dBA" # expect fail error: The highest level is stated as 95 dBA, and space "Machines" asks for 98 dBA
}
