# Maps in the words people use, in a model and at the part; wired by them, or not
# said how.
system "Inn" { reference = "IN-1" } # expect pass: The terminals of the 4 attenuators of the design are stated. && mind Before the amplifier is connected
attenuator_model "own/12" { terminals = "in 1; out 2; common 3" }
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    terminals = "1 attenuated line in, 2 priority line in, 3 to the loudspeakers, 4 common"
    loudspeaker "LCounter" { tap = "6 W" }
  }
  attenuator "Snug" { # expect pass: The conductors of attenuator "Snug" are on their terminals.
    terminals = "1 line in, 2 to the loudspeakers, 3 common, 4 and 5 relay 24 V"
    wired     = "1 line, 2 loudspeakers, 3 common, 4 relay, 5 relay"
    loudspeaker "LSnug" { tap = "6 W" }
  }
  attenuator "Garden" {
    model = "own/12"
    loudspeaker "LGarden" { tap = "6 W" }
  }
  attenuator "Yard" {
    terminals = "A input, B output, C com"
    loudspeaker "LYard" { tap = "6 W" }
  }
}
