# What hangs there is not all known.
amplifier "Rack" { rated_power = "240 W" } # expect open: tap
amplifier "Old" {} # expect open: rated power
amplifier "Shed" { rated_power = "60 W" } # expect pass: below 100 W
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { quantity = 4 }
}
line "Barn" {
  amplifier = "Old"
  output    = "100 V"
  loudspeaker "B" { tap = "6 W" }
}
line "Shed" {
  amplifier = "Shed"
  output    = "100 V"
  loudspeaker "S" {}
}
