# Readings that say nothing about a fault: the copper of the windings, a number without a unit, a part of the line alone, a
# figure that is off, and one line of two.
amplifier "Ohmmeter" { rated_power = "480 W" } # expect fail note: and what was read on its lines cannot be held against the design: it drives
amplifier "Bare" { rated_power = "480 W" } # expect fail note: cannot be held against the design
amplifier "Part" { rated_power = "480 W" } # expect fail note: cannot be held against the design
amplifier "Off" { rated_power = "480 W" } # expect fail note: and reading "Off" shows 400 ohm where 833.3 ohm is predicted: it drives
amplifier "Two" { rated_power = "480 W" } # expect fail note: and no impedance was read on Second: it drives
line "Ohmmeter" {
  amplifier = "Ohmmeter"
  output    = "100 V"
  loudspeaker "A" { tap = "12 W" }
}
line "Bare" {
  amplifier = "Bare"
  output    = "100 V"
  loudspeaker "B" { tap = "12 W" }
}
line "Part" {
  amplifier = "Part"
  output    = "100 V"
  home_run  = "0 m"
  cable     = "2 x 1.5 mm2"
  loudspeaker "C" {
    quantity = 2
    spacing  = "1 m"
    tap      = "6 W"
  }
}
line "Off" {
  amplifier = "Off"
  output    = "100 V"
  loudspeaker "D" { tap = "12 W" }
}
line "First" {
  amplifier = "Two"
  output    = "100 V"
  loudspeaker "E" { tap = "12 W" }
}
line "Second" {
  amplifier = "Two"
  output    = "100 V"
  loudspeaker "F" { tap = "6 W" }
}
reading "Ohmmeter" {
  line       = "Ohmmeter"
  impedance  = "800 ohm"
  instrument = "ohmmeter"
}
reading "Bare" {
  line      = "Bare"
  impedance = "800"
}
reading "Part" {
  line      = "Part"
  beyond    = "C 1"
  impedance = "1.6 kohm"
  frequency = "1 kHz"
}
reading "Off" {
  line      = "Off"
  impedance = "400 ohm"
  frequency = "1 kHz"
}
reading "Two" {
  line      = "First"
  impedance = "800 ohm"
  frequency = "1 kHz"
}
