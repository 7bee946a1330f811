# The output is called "Zone 1" and nothing says what it is.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "H" { tap = "6 W" } # expect open: missing kind of output (a line voltage, or ohms) of output "Zone 1" of amplifier "Rack"
  loudspeaker "I" { impedance = "8 ohm" } # expect open: missing kind of output
}
