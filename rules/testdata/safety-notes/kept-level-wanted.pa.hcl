# What is asked for is the highest level stated: exactly at it.
system "Works" { duty = "announcements" } # expect pass: height # expect pass: no emergency function # expect pass: No loudspeaker line # expect pass: No mains
space "Machines" {
  wanted_level = "98 dBA"
}
safety { # expect pass: speaks of all
  highest_level  = "98 dBA" # expect pass: highest level stated && 98 dBA harms hearing
}
