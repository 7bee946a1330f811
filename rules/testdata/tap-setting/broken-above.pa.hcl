# Above the highest.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    taps_100V = ["6 W", "3 W"]
    tap       = "10 W" # expect fail error: the nearest is 6 W (-2.2 dB)
  }
}
