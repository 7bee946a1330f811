# 120 W at the end of 150 m of 0.5 mm² cable.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.5 mm2" # expect fail warning: The cable of line "Yard" takes 12.3 % of the voltage (1.14 dB) from "Horn" && 150 m of cable, 11.7 ohm there and back: 100 V at the amplifier, 87.69 V at Horn = 12.31 % less && power lost in the cable && class 5 && at most 10 % of the voltage, which is 0.915 dB at the loudspeaker; common practice && remedy (proved) Use 2 x 0.75 mm2 for the line: 8.56 % (0.777 dB)
  home_run  = "150 m"
  loudspeaker "Horn" { tap = "120 W" }
}
