# The loudspeaker has no taps for 70 V at all.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" {
    taps_100V = ["6 W", "3 W"]
    tap       = "6 W" # expect fail error: is set to 6 W for 70.7 V and has taps for 100 V only && 6 W × (70.7 V / 100 V)² = 3 W (-3.0 dB) && remedy (computed) If its tap for 100 V is meant, write tap_for = "100 V": it then counts with 3 W && remedy (advice) Choose a loudspeaker that has taps for 70.7 V
  }
}
