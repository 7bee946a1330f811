# A field report: a pub wants four 8 ohm loudspeakers on a two-channel amplifier
# for 4 ohm or more, and asks whether two in parallel on each channel are allowed;
# the old wiring may be in series. Both are: in series there is only less power.
# Nothing is to be raised here. Names are invented.
amplifier "Bar" {
  channel "Left" { rated_power = "40 W" }
  channel "Right" { rated_power = "40 W" }
  output "Left" {
    channel          = "Left"
    lowest_impedance = "4 ohm" # expect impedance-floor pass: needs at least 4 ohm and sees 4 ohm && 2 × 8 ohm in parallel
  }
  output "Right" {
    channel          = "Right"
    lowest_impedance = "4 ohm" # expect impedance-floor pass: needs at least 4 ohm and sees 16 ohm && 2 × 8 ohm in series
  }
}
line "Left pair" {
  amplifier = "Bar"
  output    = "Left"
  wiring    = "parallel"
  loudspeaker "B" {
    quantity    = 2
    impedance   = "8 ohm"
    rated_power = "50 W"
  }
}
line "Right pair" {
  like   = "Left pair"
  output = "Right"
  wiring = "series"
}
