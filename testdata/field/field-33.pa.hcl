# A field report: the owner of a jukebox asks what line transformers are good for.
# 78 ft of 24 AWG have 4 ohm; in front of a 4 ohm loudspeaker they take half the
# voltage, in front of a 10 W tap at 70 V next to nothing. Names are invented.
system "Field report" { units = "US" }
amplifier "Juke" {
  channel "Plain" { rated_power = "25 W" }
  channel "Line" { rated_power = "25 W" }
  output "Plain" {
    channel          = "Plain"
    lowest_impedance = "4 ohm"
  }
  output "Line" {
    channel = "Line"
    volts   = "70 V"
  }
}
line "Plain" {
  amplifier = "Juke"
  output    = "Plain"
  cable     = "24 AWG" # expect cable-loss fail error: takes 50 % of the voltage (6.03 dB) && 4.004 ohm there and back
  home_run  = "78 ft"
  loudspeaker "P" {
    impedance   = "4 ohm"
    rated_power = "40 W"
  }
}
line "With transformer" {
  amplifier = "Juke"
  output    = "Line"
  cable     = "24 AWG" # expect cable-loss pass: takes 0.794 % of the voltage (0.0693 dB)
  home_run  = "78 ft"
  loudspeaker "T" { tap = "10 W" }
}
