# A half-watt tap for 70 V on a 25 V line is hardly heard.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "25 V"
  loudspeaker "E" {
    quantity = 20
    tap      = "1/2 W"
    tap_for  = "70 V" # expect fail error: takes 0.0625 W, 9.03 dB less than marked && remedy (advice) Connect it to the terminals of its transformer that are marked for 25 V
  }
}
