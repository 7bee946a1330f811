# An output that is only called "8 ohm" allows no less than that; a line on 100 V is load-margin's.
amplifier "Rack" { rated_power = "120 W" } # expect pass: The 8 ohm output of amplifier "Rack" needs at least 8 ohm and sees 16 ohm && an output called 8 ohm allows no less
line "Room" {
  amplifier = "Rack"
  output    = "8 ohm"
  loudspeaker "B" { impedance = "16 ohm" }
}
amplifier "Other" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Other"
  output    = "100 V"
  loudspeaker "H" { tap = "60 W" }
}
