# A ring round a yard in cable that is too thin even for a ring: the loudspeaker across the yard loses most, fed from both
# sides alike.
amplifier "Rack" { rated_power = "480 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2" # expect fail warning: from "Y 4", the worst loudspeaker; 4 others lose more than 10 % too && 160 m of cable one way (12.48 ohm there and back) and 160 m the other (12.48 ohm): 100 V at the amplifier && cable the other way round, both conductors && 2 × 160 m × 39 ohm/km = 12.48 ohm && remedy (proved) Use 2 x 0.75 mm2 for the line && remedy (advice) Split the line in two.
  home_run  = "40 m"
  ring_leg  = "40 m"
  loudspeaker "Y" {
    quantity = 7
    spacing  = "40 m"
    tap      = "60 W"
  }
}
