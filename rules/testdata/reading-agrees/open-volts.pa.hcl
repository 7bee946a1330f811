# Volts of speech mean nothing; nor of a tone at an unknown level.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "0 m"
  loudspeaker "H" {
    quantity = 10
    tap      = "10 W"
    spacing  = "0 m"
  }
}
reading "First fix" {
  line = "Hall"
  volts = "0.8 V" # expect open: missing steady tone && should show 100 ohm
  signal = "speech"
}
reading "Tone" {
  line = "Hall"
  volts = "30 V" # expect open: missing level of the amplifier during the tone
  signal = "1 kHz tone"
}
reading "Unknown" {
  line = "Hall"
  volts = "30 V" # expect open: signal that is not stated
}
