# 2.1 % is another one.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    taps_100V = ["10 W"]
    tap       = "10.21 W" # expect fail error: the nearest is 10 W (-0.1 dB)
  }
}
