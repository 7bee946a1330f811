# 72 W on a zone that may carry 60 W. The smaller line fits on the other zone.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone" {
    quantity     = 2
    volts        = "100 V"
    highest_load = "60 W" # expect fail error: 12 W too much && amplifier has 168 W in hand && 6 × 10 W + 2 × 6 W = 72 W && at most 60 W && remedy (proved) Put line "Store" (12 W) on output "Zone 2", which then carries 12 W
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 6
    tap      = "10 W"
  }
}
line "Store" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "T" {
    quantity = 2
    tap      = "6 W"
  }
}
