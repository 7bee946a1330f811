# Plain cable on the line, and its branch in cable of half an hour where the job asks
# for two; the catalogue holds the right one for the line.
system "Mill" { duty = "emergency" }
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/plain" {
  size       = "1.5 mm2"
  class      = 2
  cores      = 2
  insulation = "500 V"
}
cable_model "own/fire 120" {
  size           = "1.5 mm2"
  class          = 2
  cores          = 2
  insulation     = "500 V"
  fire_resistant = "120 min"
}
line "A" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/plain" # expect fail warning: The data of cable "own/plain" on emergency line "A" state no fire resistance; 2 h are wanted && set by the criteria && remedy (computed) Lay "own/fire 120" of the catalogue, which works for 2 h in a fire
  home_run  = "20 m"
  loudspeaker "A" { tap = "6 W" }
  branch "Stairs" {
    leg   = "4 m"
    cable = "typical/2 x 1.5 mm2 fire 30" # expect fail error: cable "typical/2 x 1.5 mm2 fire 30" of branch "Stairs" works for 30 min in a fire; 2 h are wanted
    loudspeaker "S" {
      tap = "6 W"
      leg = "3 m"
    }
  }
}
criteria {
  limit "fire-cable" { least_time = "2 h" }
}
