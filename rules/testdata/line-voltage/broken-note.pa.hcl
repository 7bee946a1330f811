# Taps for 100 V on a 70 V line are usual: 3 dB less, worth knowing.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" {
    taps_100V = ["6 W", "3 W"]
    tap       = "6 W"
    tap_for   = "100 V" # expect fail note: takes 3 W, 3.01 dB less than marked
  }
}
