# A constant-voltage output with a floor of its own.
amplifier "Rack" {
  rated_power = "400 W"
  output "Line" {
    volts            = "100 V"
    lowest_impedance = "50 ohm" # expect fail error: needs at least 50 ohm and sees 40 ohm && (100 V)² / 250 W = 40 ohm && remedy (computed) Take 50 W off this output
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Line"
  loudspeaker "H" {
    quantity = 25
    tap      = "10 W"
  }
}
