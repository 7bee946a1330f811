# 8 ohm are a loudspeaker's nominal impedance; 12 ohm at 1 kHz need not be a fault.
amplifier "Rack" {
  rated_power      = "100 W"
}
line "Stage" {
  amplifier = "Rack"
  output    = "4 ohm"
  loudspeaker "S" { impedance = "8 ohm" }
}
reading "First fix" {
  line = "Stage"
  impedance = "12 ohm" # expect open: missing impedance over frequency of loudspeaker "S"
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
