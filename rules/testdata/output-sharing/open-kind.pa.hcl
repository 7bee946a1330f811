# What the output "Extra" is, is not stated; and one line is on no known output.
amplifier "Rack" { rated_power = "120 W" } # expect open: missing kind of output (a line voltage, or ohms) of output "Extra" of amplifier "Rack"
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Extra"
  loudspeaker "S" { tap = "30 W" }
}
