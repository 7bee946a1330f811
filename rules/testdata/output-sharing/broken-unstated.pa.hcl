# Nothing is stated: a line and a low-impedance output of one channel at once are worth a warning.
amplifier "Rack" {
  rated_power = "120 W"
  output "Line" { volts = "100 V" }
  output "Direct" { lowest_impedance = "8 ohm" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Line"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Direct" # expect fail warning: most amplifiers allow only one of them && remedy (advice) Look at the data sheet
  loudspeaker "S" { impedance = "8 ohm" }
}
