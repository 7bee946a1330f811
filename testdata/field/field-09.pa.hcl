# A field report: sixteen 60 W loudspeakers on a 1000 W amplifier at 70 V over a
# pair of 18 AWG. The asker wondered about conduit; nobody asked about the cable.
# Its length was not given: here are four, the load at the far end. That thin
# cable does at 70 V is true of a few watts only. Names are invented.
system "Field report" { units = "US" }
amplifier "Amp 25" {
  rated_power = "1000 W" # expect load-margin fail warning: only 4 % in hand && share of the rating 96 % && implies at 70.7 V 5 ohm
}
amplifier "Amp 50" {
  rated_power = "1000 W" # expect load-margin fail warning: only 4 % in hand && share of the rating 96 % && implies at 70.7 V 5 ohm
}
amplifier "Amp 100" {
  rated_power = "1000 W" # expect load-margin fail warning: only 4 % in hand && share of the rating 96 % && implies at 70.7 V 5 ohm
}
amplifier "Amp 200" {
  rated_power = "1000 W" # expect load-margin fail warning: only 4 % in hand && share of the rating 96 % && implies at 70.7 V 5 ohm
}
amplifier "Amp 12 AWG" {
  rated_power = "1000 W" # expect load-margin fail warning: only 4 % in hand && share of the rating 96 % && implies at 70.7 V 5 ohm
}
line "25 ft" {
  amplifier = "Amp 25"
  output    = "70 V"
  cable     = "18 AWG" # expect cable-loss pass: takes 5.78 % of the voltage (0.517 dB) && only the total length is known # expect cable-current fail error: carries at least 12.79 A at full output; its conductors may carry 6 A && 960 W / 70.7 V = 13.58 A && remedy (proved) Lay 14 AWG
  length    = "25 ft"
  loudspeaker "Y" {
    quantity = 16
    tap      = "60 W"
  }
}
line "50 ft" { # expect cable-loss fail warning: takes 10.9 % of the voltage (1 dB) # expect cable-current fail error: at least 12.09 A
  like      = "25 ft"
  amplifier = "Amp 50"
  length    = "50 ft"
}
line "100 ft" { # expect cable-loss fail warning: takes 19.7 % of the voltage (1.9 dB) && remedy (proved) Use 14 AWG for the line # expect cable-current fail warning: at least 10.9 A
  like      = "25 ft"
  amplifier = "Amp 100"
  length    = "100 ft"
}
line "200 ft" { # expect cable-loss fail error: takes 32.9 % of the voltage (3.47 dB) # expect cable-current fail warning: at least 9.11 A
  like      = "25 ft"
  amplifier = "Amp 200"
  length    = "200 ft"
}
line "100 ft of 12 AWG" {
  like      = "25 ft"
  amplifier = "Amp 12 AWG"
  cable     = "12 AWG" # expect cable-loss pass: takes 5.75 % of the voltage (0.514 dB)
  length    = "100 ft"
}
