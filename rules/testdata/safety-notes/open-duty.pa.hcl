# Without a duty nobody can tell whether lives hang on the system.
amplifier "Rack" { rated_power = "120 W" } # expect pass: isolation # expect pass: earthing # expect pass: separation
line "Hall" { # expect pass: covering
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
system "Hall" {} # expect open: duty of the system # expect pass: height # expect pass: No level
