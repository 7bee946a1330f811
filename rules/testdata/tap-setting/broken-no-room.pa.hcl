# The next tap up would load the amplifier too far: it is shown, not written.
amplifier "Rack" { rated_power = "180 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity  = 10
    taps_100V = ["20 W", "10 W"]
    tap       = "15 W" # expect fail error: the nearest are 10 W (-1.8 dB) and 20 W (+1.2 dB) && remedy (computed) Set it to 20 W (+1.2 dB; the amplifier then carries 200 W of 180 W) && remedy (proved) Set it to 10 W
  }
}
