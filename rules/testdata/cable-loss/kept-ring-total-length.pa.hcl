# Only the length to the last loudspeaker and the leg back are known: as if all of it hung in the middle of the ring, 100 m
# from the amplifier either way.
amplifier "Rack" { rated_power = "240 W" }
line "Ward" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2" # expect pass: takes 2.59 % of the voltage && its loudspeakers, all counted where the ring loses most && the whole load counts where the ring loses most, which is more than will be lost
  length    = "150 m"
  ring_leg  = "50 m"
  loudspeaker "W" {
    quantity = 20
    tap      = "10 W"
  }
}
