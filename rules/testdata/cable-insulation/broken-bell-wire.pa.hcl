# Bell wire and microphone cable on a 100 V line; the catalogue holds better.
amplifier "Rack" { rated_power = "120 W" }
cable_model "own/bell wire" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "60 V"
}
cable_model "own/data pair" {
  size       = "0.5 mm2"
  cores      = 2
  insulation = "72 V"
}
cable_model "own/2 x 0.75 mm2" {
  size       = "0.75 mm2"
  cores      = 2
  insulation = "300 V"
}
cable_model "own/2 x 2.5 mm2" {
  size       = "2.5 mm2"
  cores      = 2
  insulation = "500 V"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "own/bell wire" # expect fail error: Line "Hall" carries 100 V, and the insulation of cable "own/bell wire" is rated 60 V && data sheet of own/bell wire && remedy (computed) Lay "own/2 x 0.75 mm2" of the catalogue, which is insulated for 300 V
  home_run  = "20 m"
  loudspeaker "H" { tap = "6 W" }
  branch "Foyer" {
    leg   = "3 m"
    cable = "own/data pair" # expect fail error: cable "own/data pair" of branch "Foyer" is rated 72 V
    loudspeaker "F" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
