# A mixer alone has no loudspeaker terminals.
system "Desk" { duty = "announcements" } # expect pass: No level that harms hearing is # expect pass: Nothing in the design says that # expect pass: No loudspeaker line is in the # expect pass: The duty is announcements: no emergency
mixer "Desk" { # expect pass: Nothing stated contradicts earthing of mains # expect pass: Nothing stated contradicts isolation of mains # expect pass: Nothing stated contradicts separation of mains
  input "Mic" { takes = "microphone" }
}
