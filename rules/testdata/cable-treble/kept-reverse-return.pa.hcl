# However wide the loop of its conductors lies, on 100 V it does no harm.
amplifier "Rack" { rated_power = "240 W" }
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "typical/2 x 2.5 mm2" # expect pass: at most && more at 10 kHz than at 1 kHz && at most the inductance of a circle of its length
  home_run  = "50 m"
  ring_leg  = "50 m"
  return    = "reverse"
  loudspeaker "L" {
    quantity = 10
    tap      = "20 W"
    spacing  = "10 m"
  }
}
