# What the microphone and the control at the pool stand is on no data sheet.
amplifier "Rack" { rated_power = "120 W" }
line "Pool" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Wall" {
    stands_in = "Pool"
    loudspeaker "P" {
      tap      = "5 W"
      exposure = "IP66"
      space    = "Pool"
    }
  }
}
microphone "Lifeguard" {
  into      = "Rack"
  stands_in = "Pool"
}
space "Pool" { exposure = "IP54" } # expect open: Whether 1 attenuator and 1 microphone in "Pool" stand the place cannot be told. && degree && degree
