# The two conductors of a relay may be exchanged.
system "Inn" { reference = "IN-1" } # expect pass: The terminals of the attenuator of the design are stated.
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" { # expect pass: on their terminals
    terminals = "1 in, 2 out, 3 common, 4 relay, 5 relay"
    wired     = "1 line, 2 loudspeakers, 3 common, 5 relay, 4 relay"
    loudspeaker "LCounter" { tap = "6 W" }
  }
}
