# The other way round it takes eight times its marking.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "E" {
    taps_25V = ["2 W", "1 W"]
    tap      = "2 W"
    tap_for  = "25 V" # expect fail error: takes 16 W, 9.03 dB more than marked && remedy (advice) Its transformer has no taps for 70.7 V
  }
}
