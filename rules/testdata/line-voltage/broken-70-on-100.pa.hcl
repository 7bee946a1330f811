# A tap marked for 70 V takes twice its watts on 100 V. The model has the same windings marked for 100 V.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity  = 4
    taps_100V = ["12 W", "6 W", "3 W"]
    taps_70V  = ["6 W", "3 W", "1.5 W"]
    tap       = "6 W"
    tap_for   = "70 V" # expect fail error: on its 6 W tap for 70.7 V and the line carries 100 V: it takes 12 W, 3.01 dB more than marked && 6 W × (100 V / 70.7 V)² = 12 W && remedy (proved) Connect it to its 6 W tap for 100 V
  }
}
