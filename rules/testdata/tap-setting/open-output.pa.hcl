# Whether the tap is from the 100 V or the 70 V list depends on the output.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  loudspeaker "H" { # expect open: missing output, with its voltage or its ohms of line "Hall"
    taps_100V = ["6 W", "3 W"]
    taps_70V  = ["3 W", "1.5 W"]
    tap       = "3 W"
  }
}
