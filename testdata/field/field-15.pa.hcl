# A field report: 250 ft to a pair of garden loudspeakers of low impedance, taken
# here as 8 ohm together; advice ran from 9 to 16 gauge. What helps is the loss with
# each, and the same power on a 70 V line. Names are invented.
system "Field report" { units = "US" }
amplifier "House" {
  channel "A" { rated_power = "60 W" }
  channel "B" { rated_power = "60 W" }
  channel "C" { rated_power = "60 W" }
  channel "D" { rated_power = "100 W" }
  output "A" {
    channel          = "A"
    lowest_impedance = "4 ohm"
    rated_into       = "8 ohm"
  }
  output "B" {
    channel          = "B"
    lowest_impedance = "4 ohm"
    rated_into       = "8 ohm"
  }
  output "C" {
    channel          = "C"
    lowest_impedance = "4 ohm"
    rated_into       = "8 ohm"
  }
  output "D" {
    channel = "D"
    volts   = "70 V"
  }
}
line "16 gauge" {
  amplifier = "House"
  output    = "A"
  cable     = "16 AWG" # expect cable-loss fail error: takes 20.1 % of the voltage (1.94 dB) && remedy (proved) Use 12 AWG && remedy (advice) Feed these loudspeakers from a constant-voltage line
  home_run  = "250 ft"
  loudspeaker "G" {
    quantity    = 2
    spacing     = "0 ft"
    impedance   = "16 ohm"
    rated_power = "30 W"
  }
}
line "14 gauge" {
  like   = "16 gauge"
  output = "B"
  cable  = "14 AWG" # expect cable-loss fail warning: takes 13.6 % of the voltage (1.27 dB)
}
line "12 gauge" {
  like   = "16 gauge"
  output = "C"
  cable  = "12 AWG" # expect cable-loss pass: takes 9.03 % of the voltage (0.822 dB)
}
line "70 V" {
  amplifier = "House"
  output    = "D"
  cable     = "16 AWG" # expect cable-loss pass: takes 2.35 % of the voltage (0.207 dB)
  home_run  = "250 ft"
  loudspeaker "T" {
    quantity    = 2
    spacing     = "0 ft"
    tap         = "30 W"
    rated_power = "30 W"
  }
}
