# A resistance meter sees copper, an insulation tester no impedance at all; neither is compared, nor a figure without frequency or far from 1 kHz, nor one with the amplifier on the line.
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
reading "Copper" {
  line = "Hall"
  impedance = "0.6 ohm" # expect open: copper of cable and transformers && assumed a resistance meter can show a dead short
  instrument = "multimeter"
  amplifier_disconnected = true
}
reading "Tester" {
  line = "Hall"
  impedance = "100 ohm" # expect open: taken with an insulation tester
  frequency = "1 kHz"
  instrument = "insulation tester"
  amplifier_disconnected = true
}
reading "No frequency" {
  line = "Hall"
  impedance = "100 ohm" # expect open: missing frequency of the meter
  instrument = "impedance meter"
  amplifier_disconnected = true
}
reading "Bass" {
  line = "Hall"
  impedance = "30 ohm" # expect open: taken at 50 Hz
  frequency = "50 Hz"
  instrument = "impedance meter"
  amplifier_disconnected = true
}
reading "On line" {
  line = "Hall"
  impedance = "0.2 ohm" # expect open: with the amplifier on the line
  frequency = "1 kHz"
  instrument = "impedance meter"
  amplifier_disconnected = false
}
