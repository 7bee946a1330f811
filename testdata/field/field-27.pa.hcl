# A field report: six watts are wanted on a 70 V line and the transformer has taps
# of 5 W (1000 ohm) and 10 W (500 ohm). The lower one gives 0.8 dB less. Names are
# invented.
amplifier "Hall amp" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Hall amp"
  output    = "70 V"
  loudspeaker "H" {
    quantity = 4
    taps_70V = ["10 W", "5 W"]
    tap      = "6 W" # expect tap-setting fail error: is set to 6 W and has no such tap for 70.7 V; the nearest are 5 W (-0.8 dB) and 10 W (+2.2 dB) && remedy (proved) Set it to 5 W (-0.8 dB; the amplifier then carries 20 W of 60 W)
  }
}
