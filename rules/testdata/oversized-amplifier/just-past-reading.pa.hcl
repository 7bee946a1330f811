# An ohm outside.
amplifier "Low" { rated_power = "480 W" } # expect fail note: reading "Low" shows 599 ohm where 800 ohm is predicted
amplifier "High" { rated_power = "480 W" } # expect fail note: reading "High" shows 961 ohm where 800 ohm is predicted
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
  impedance = "599 ohm"
  frequency = "1 kHz"
}
reading "High" {
  line      = "High"
  impedance = "961 ohm"
  frequency = "1 kHz"
}
