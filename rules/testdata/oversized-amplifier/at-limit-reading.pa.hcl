# 12.5 W are 800 ohm: 600 and 960 ohm are the ends of what agrees.
amplifier "Low" { rated_power = "480 W" } # expect pass: What hangs on amplifier "Low" has been measured (Low) and agrees with the design
amplifier "High" { rated_power = "480 W" } # expect pass: measured (High)
line "Low" {
  amplifier = "Low"
  output    = "100 V"
  loudspeaker "L" { tap = "12.5 W" }
}
line "High" {
  amplifier = "High"
  output    = "100 V"
  loudspeaker "H" { tap = "12.5 W" }
}
reading "Low" {
  line      = "Low"
  impedance = "600 ohm"
  frequency = "1 kHz"
}
reading "High" {
  line      = "High"
  impedance = "960 ohm"
  frequency = "1 kHz"
}
