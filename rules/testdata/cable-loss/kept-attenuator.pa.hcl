# What an attenuator loses is not the cable's.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2" # expect pass: 88.69 V at Bar instead of the 89.13 V behind its attenuator
  home_run  = "20 m"
  attenuator "Knob" {
    rating         = "100 W"
    insertion_loss = "1 dB"
    loudspeaker "Bar" {
      leg = "5 m"
      tap = "80 W"
    }
  }
}
