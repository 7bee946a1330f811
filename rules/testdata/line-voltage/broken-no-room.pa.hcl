# The right tap is there, but the amplifier could not carry it: no change is offered that brings the next finding.
amplifier "Rack" { rated_power = "180 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" {
    quantity = 20
    taps_70V = ["10 W"]
    taps_25V = ["1 W"]
    tap      = "1 W"
    tap_for  = "25 V" # expect fail error: takes 8 W && remedy (computed) Connect it to its 10 W tap for 70.7 V. It then takes 10 W each
  }
}
