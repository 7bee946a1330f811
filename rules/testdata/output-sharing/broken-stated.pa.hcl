# One of the two says that it must not be used with the other.
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
  output    = "Direct" # expect fail error: The outputs "Line" and "Direct" of amplifier "Rack" must not be in use together
  loudspeaker "S" { impedance = "8 ohm" }
}
