# Two channels: the second one has a single loudspeaker, and the reading was taken
# on a line of the first. The level in the hall is no reading of impedance.
amplifier "Rack" {
  channel "A" { rated_power = "250 W" } # expect pass: What hangs on channel "A" of amplifier "Rack" has been measured (Hall) and agrees with the design
  channel "B" { rated_power = "250 W" } # expect fail note: Channel "B" of amplifier "Rack" is rated 250 W, 41.7 times the 6 W
  output "A 100" {
    channel = "A"
    volts   = "100 V"
  }
  output "B 100" {
    channel = "B"
    volts   = "100 V"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "A 100"
  loudspeaker "H" {
    quantity = 2
    tap      = "6 W"
  }
}
line "Porch" {
  amplifier = "Rack"
  output    = "B 100"
  loudspeaker "P" {
    tap   = "6 W"
    space = "Porch"
  }
}
space "Porch" { height = "3 m" }
reading "Line" {
  line      = "Hall"
  impedance = "800 ohm"
  frequency = "1 kHz"
}
reading "Level" {
  space = "Porch"
  level = "70 dBA"
}
