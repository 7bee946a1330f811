# A long, flat hall of hard surfaces: a low figure there is a note, and so is the index
# of what hangs on walls nobody named.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "H" {
    kind        = "wall"
    sensitivity = "91 dB"
    coverage    = "120 deg"
    tap         = "6 W"
    quantity    = 12
    spacing     = "9 m"
    height      = "3 m"
    space       = "Concourse"
  }
}
space "Concourse" { # expect fail note: index in "Concourse" is 0.24 && Bring the reverberation time down from 5.3 s to 1.1 && assumed the absorption of "Walls" is 0.11 at 250 Hz, 0.135 at 1 kHz, 0.15 at 4 kHz, 0.15 at 8 kHz: only its other octaves are stated
  length            = "60 m"
  width             = "20 m"
  height            = "6 m"
  listeners         = "standing"
  noise             = "60 dBA"
  wanted_over_noise = "10 dB"
  surface "Floor" {
    area     = "1200 m2"
    material = "concrete, smooth"
  }
  surface "Ceiling" {
    area     = "1200 m2"
    material = "plaster, smooth"
  }
  surface "Walls" {
    area       = "960 m2"
    absorption = { "125 Hz" = 0.1, "500 Hz" = 0.12, "2 kHz" = 0.15 }
  }
}
