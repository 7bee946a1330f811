# A line of which the output is not stated may be on the other one.
amplifier "Rack" { # expect open: missing output, with its voltage or its ohms of line "Stage"
  rated_power = "120 W"
  output "Line" {
    volts      = "100 V"
    never_with = ["Direct"]
  }
  output "Direct" { lowest_impedance = "8 ohm" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Line"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  loudspeaker "S" { tap = "30 W" }
}
