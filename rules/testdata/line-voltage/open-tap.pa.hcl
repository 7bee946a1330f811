# No tap is stated; a unit of high impedance without a rating may be made for the line or not.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {} # expect open: missing tap of loudspeaker "H"
  loudspeaker "Horn" { impedance = "500 ohm" } # expect open: missing rated power of loudspeaker "Horn"
}
