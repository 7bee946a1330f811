# 3 % is another voltage.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "70 V"
  loudspeaker "H" {
    tap     = "6 W"
    tap_for = "72.8 V" # expect fail error: 0.253 dB less than marked
  }
}
