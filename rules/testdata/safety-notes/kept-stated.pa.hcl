system "Hall" { duty = "emergency" } # expect pass: height # expect pass: No level # expect pass: fire engineer of the job answers for it
amplifier "Rack" { rated_power = "120 W" } # expect pass: isolation # expect pass: earthing # expect pass: separation
line "Hall" { # expect pass: covering
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" }
}
safety { # expect pass: speaks of all
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  emergency_by    = "fire engineer of the job"
  emergency_rules = "voice alarm rules of the country"
}
