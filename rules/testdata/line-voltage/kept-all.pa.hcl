# A tap for the voltage of the line, a unit of high impedance rated for what it takes, and a plain loudspeaker on an output for it.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "8 ohm" }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  loudspeaker "B" { impedance = "8 ohm" } # expect pass: needs none on a low-impedance output
}
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" } # expect pass: is on a tap for 100 V
  loudspeaker "Horn" { # expect pass: takes 12 W straight from the line and is rated 15 W
    impedance   = "833.3 ohm"
    rated_power = "15 W"
  }
}
