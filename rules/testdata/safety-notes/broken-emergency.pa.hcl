system "Hall" { duty = "emergency" } # expect pass: height # expect pass: No level # expect fail error: nobody is named # expect fail error: rules it is built to
amplifier "Rack" { rated_power = "120 W" } # expect pass: isolation # expect pass: earthing # expect pass: separation
line "Hall" { # expect pass: covering
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}

