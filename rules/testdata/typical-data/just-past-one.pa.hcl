# One typical loudspeaker is worth the note.
system "Hall" { duty = "announcements" }
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    model = "typical/ceiling-6" # expect fail note: 1 part of the design uses it
    tap   = "6 W"
  }
}
