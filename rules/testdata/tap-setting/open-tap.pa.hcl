# A list but no tap; and a tap of which the voltage is not known.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { # expect open: missing tap of loudspeaker "H"
    taps_100V = ["6 W", "3 W"]
  }
}
