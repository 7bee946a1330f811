# It does not matter which of the two says it.
amplifier "Rack" {
  rated_power = "120 W"
  output "Line" { volts = "100 V" }
  output "Direct" {
    lowest_impedance = "8 ohm"
    never_with       = ["Line"]
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Line"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Direct" # expect fail error: must not be in use together && remedy (advice) Use one of them
  loudspeaker "S" { impedance = "8 ohm" }
}
