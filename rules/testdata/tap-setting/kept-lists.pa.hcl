# One of two lists; and a loudspeaker without any list, of which nothing is asked.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { # expect pass: has the 3 W tap for 100 V
    taps_100V = ["6 W", "3 W"]
    taps_70V  = ["3 W", "1.5 W"]
    tap       = "3 W"
  }
  loudspeaker "I" { tap = "5 W" }
  loudspeaker "J" { # expect pass: has the 1.5 W tap for 70.7 V
    taps_100V = ["6 W", "3 W"]
    taps_70V  = ["3 W", "1.5 W"]
    tap       = "1.5 W"
    tap_for   = "70 V"
  }
}
