# Somebody answers for an emergency function that the duty does not name.
system "Hall" { duty = "announcements" } # expect pass: height # expect pass: No level # expect pass: No loudspeaker line # expect pass: No mains
safety { # expect pass: speaks of all
  emergency_by = "fire engineer of the job" # expect fail warning: The duty is announcements && speaks of an emergency function
}
