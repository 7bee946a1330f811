# Each zone within its limit; together more than one may carry.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone" {
    quantity     = 2
    volts        = "100 V"
    highest_load = "60 W" # expect pass: take 40 W # expect pass: take 50 W
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 4
    tap      = "10 W"
  }
}
line "Store" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "T" {
    quantity = 5
    tap      = "10 W"
  }
}
