# Large, and the line was measured. A small amplifier with one loudspeaker is no
# matter: a short loads it enough.
amplifier "Rack" { rated_power = "480 W" } # expect pass: has been measured
amplifier "Shed" { rated_power = "60 W" }  # expect pass: below 100 W
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 2
    tap      = "6 W"
  }
}
line "Shed" {
  amplifier = "Shed"
  output    = "100 V"
  loudspeaker "S" { tap = "3 W" }
}
reading "Before handing over" {
  line      = "Hall"
  impedance = "800 ohm"
  frequency = "1 kHz"
}
