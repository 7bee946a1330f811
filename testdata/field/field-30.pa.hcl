# A field report: a rule that the cable may have 5 % of the impedance of the load,
# and two examples for 100 W at 70 V: 50 ft of 22 AWG and 500 ft of 12 AWG, 1.6 ohm
# each of 50 ohm. 5 % of the impedance is 4.76 % of the voltage. Thin cable over the
# long way would lose 24 %. Names are invented.
system "Field report" { units = "US" }
amplifier "Short" { rated_power = "150 W" }
amplifier "Long" { rated_power = "150 W" }
amplifier "Thin" { rated_power = "150 W" }
line "Short" {
  amplifier = "Short"
  output    = "70 V"
  cable     = "22 AWG" # expect cable-loss pass: takes 3.13 % of the voltage (0.276 dB) && 1.614 ohm there and back && at most 4.76 % of the voltage, which is 0.424 dB
  home_run  = "50 ft"
  loudspeaker "S" { tap = "100 W" }
}
line "Long" {
  like      = "Short"
  amplifier = "Long"
  cable     = "12 AWG" # expect cable-loss pass: takes 3.08 % of the voltage (0.272 dB) && 1.588 ohm there and back
  home_run  = "500 ft"
}
line "Thin" { # expect cable-loss fail error: takes 24.4 % of the voltage (2.43 dB)
  like      = "Short"
  amplifier = "Thin"
  home_run  = "500 ft"
}
criteria {
  limit "cable-loss" { warning_drop = "4.76 %" }
}
