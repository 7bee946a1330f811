# The only line does not say on which output it hangs: nothing can be said about
# its terminals, nor whether the safety block has to speak of them.
system "Works" { duty = "announcements" } # expect pass: No level that harms hearing is # expect pass: Nothing in the design says that # expect pass: The duty is announcements: no emergency
amplifier "Rack" { rated_power = "120 W" } # expect pass: Nothing stated contradicts earthing of mains # expect pass: Nothing stated contradicts isolation of mains # expect pass: Nothing stated contradicts separation of mains
line "Halls" { # expect open: What the terminals of Halls carry at full output cannot be told, and so neither whether they may stay open. && output, with its voltage or its ohms
  amplifier = "Rack"
  loudspeaker "H" { tap = "6 W" }
}
safety { # expect open: Whether the safety block has to speak of the line terminals cannot be told. && output, with its voltage or its ohms
  isolation       = "before work"
  mains_separated = true
  earthed         = true
}
