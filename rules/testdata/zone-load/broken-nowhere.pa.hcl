# The other zone has room but must not be used with the low-impedance output, which is in use.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone 1" {
    volts        = "100 V"
    highest_load = "60 W" # expect fail error: 12 W too much && remedy (computed) Take 12 W off
    never_with   = []
  }
  output "Zone 2" {
    volts      = "100 V"
    never_with = ["Direct"]
  }
  output "Direct" { lowest_impedance = "8 ohm" }
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
line "Stage" {
  amplifier = "Rack"
  output    = "Direct"
  loudspeaker "D" { impedance = "8 ohm" }
}
