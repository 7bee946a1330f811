# One low-impedance output against three zones: one finding, not three.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone" {
    quantity = 3
    volts    = "100 V"
  }
  output "Direct" {
    lowest_impedance = "8 ohm"
    never_with       = ["Zone 1", "Zone 2", "Zone 3"]
  }
}
line "One" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Two" {
  amplifier = "Rack"
  output    = "Zone 2" # expect fail error: The outputs "Zone 1", "Direct" and "Zone 2" of amplifier "Rack" must not be in use together
  loudspeaker "B" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Direct"
  loudspeaker "S" { impedance = "8 ohm" }
}
