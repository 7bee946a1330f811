# A tap that is not stated is not 0 W.
amplifier "Rack" { # expect open: missing tap of loudspeaker "H"
  rated_power = "240 W"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { quantity = 25 }
}
