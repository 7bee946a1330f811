# 21 % on the way to the last of eight; three others lose more than 20 % too.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2" # expect fail error: from "H 8", the worst loudspeaker; 3 others lose more than 20 % too && at most 20 % && remedy (proved) Use 2 x 1.5 mm2
  home_run  = "165 m"
  loudspeaker "H" {
    quantity = 8
    spacing  = "15 m"
    tap      = "20 W"
  }
}
