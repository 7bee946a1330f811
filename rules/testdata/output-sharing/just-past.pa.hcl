# The second output is only just in use: by one unit of old equipment of unknown impedance.
amplifier "Rack" {
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
  output    = "Direct" # expect fail error: must not be in use together
  existing "Old unit" {}
}
