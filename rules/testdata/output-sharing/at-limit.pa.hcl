# Line and low-impedance output of one channel, and the data sheet allows it.
amplifier "Rack" { # expect pass: The 2 outputs of amplifier "Rack" that are in use may be used together
  rated_power = "120 W"
  output "Line" {
    volts      = "100 V"
    never_with = []
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
  output    = "Direct"
  loudspeaker "S" { impedance = "8 ohm" }
}
