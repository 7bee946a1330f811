# A field report: evacuation messages had been too quiet since the system was put
# in. The loudspeakers sat on their half-watt tap for 70 V and the amplifier gives
# 25 V; somebody proposed to turn the taps up. They are on the wrong terminals: an
# eighth of the power arrives. Names and the number of loudspeakers are invented.
amplifier "Evac" { rated_power = "100 W" }
line "Zone 3" {
  amplifier = "Evac"
  output    = "25 V"
  loudspeaker "E" {
    quantity = 20
    taps_70V = ["2 W", "1 W", "1/2 W", "1/4 W"]
    taps_25V = ["2 W", "1 W", "1/2 W", "1/4 W"]
    tap      = "1/2 W"
    tap_for  = "70 V" # expect line-voltage fail error: it takes 0.0625 W, 9.03 dB less than marked && 1/2 W × (25 V / 70.7 V)² = 0.0625 W && remedy (proved) Connect it to its 1/2 W tap for 25 V
  }
}
