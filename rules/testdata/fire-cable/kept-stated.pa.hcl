# Both lines in fire-resistant cable.
system "Mill" { duty = "emergency, announcements and music" }
amplifier "Rack" { rated_power = "240 W" }
line "A" { # expect pass: The cable of emergency line "A" works in a fire for 30 min or longer && limit at least 30 min
  amplifier = "Rack"
  output    = "100 V"
  cable     = "typical/2 x 1.5 mm2 fire 30"
  loudspeaker "A" { tap = "6 W" }
}
line "B" { # expect pass
  amplifier = "Rack"
  output    = "100 V"
  cable     = "typical/2 x 2.5 mm2 fire 120"
  loudspeaker "B" { tap = "6 W" }
}
