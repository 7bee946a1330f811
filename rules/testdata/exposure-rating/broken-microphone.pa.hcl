# The quay has no loudspeaker, but a microphone that is no better than one for a
# desk. Open to the sky it is a warning: nobody stated what the place needs.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    tap   = "6 W"
    space = "Hall"
  }
}
microphone "Pilot" {
  into      = "Rack"
  exposure  = "IP32" # expect fail warning: 1 microphone in "Quay" (microphone "Pilot") is IP32; the open sky needs at least IPX3
  stands_in = "Quay"
}
space "Quay" { outdoors = true }
space "Hall" { height = "4 m" }
