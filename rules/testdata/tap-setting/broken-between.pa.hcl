# Between two taps: the nearer one first, with what each changes.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" {
    quantity  = 10
    taps_70V  = ["20 W", "10 W", "5 W"]
    tap       = "6 W" # expect fail error: has no such tap for 70.7 V; the nearest are 5 W (-0.8 dB) and 10 W (+2.2 dB) && remedy (proved) Set it to 5 W (-0.8 dB; the amplifier then carries 50 W of 240 W) && remedy (proved) Set it to 10 W (+2.2 dB; the amplifier then carries 100 W of 240 W)
  }
}
