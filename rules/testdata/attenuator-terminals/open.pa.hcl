# One answer for the job, however many attenuators: a model that says nothing, a map
# that names no common, and none at all. The one whose map cannot be compared says
# so itself.
system "Inn" { reference = "IN-1" } # expect open: Which terminal is in, which out and which common is not stated for 4 of the 5 attenuators of the design && missing terminals of the attenuator of attenuator_model "own/12": terminals = "1 in, 2 out, 3 common" && missing terminals of the attenuator of attenuator "Snug" && mind Before the amplifier is connected
attenuator_model "own/12" { rating = "12 W" }
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    model = "own/12"
    loudspeaker "LCounter" { tap = "6 W" }
  }
  attenuator "Hatch" {
    model = "own/12"
    loudspeaker "LHatch" { tap = "6 W" }
  }
  attenuator "Snug" {
    terminals = "1 in, 2 out"
    loudspeaker "LSnug" { tap = "6 W" }
  }
  attenuator "Garden" {
    wired = "1 line, 2 common, 3 loudspeakers"
    loudspeaker "LGarden" { tap = "6 W" }
  }
  attenuator "Yard" { # expect open: Whether the conductors of attenuator "Yard" are on their terminals cannot be told.
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 line, 2 loudspeakers, 7 common"
    loudspeaker "LYard" { tap = "6 W" }
  }
}
