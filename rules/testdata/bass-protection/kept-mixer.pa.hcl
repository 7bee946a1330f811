# The cut is on the mixer before the amplifier. A second amplifier without any
# source is not asked, and neither are loudspeakers without a transformer.
mixer "Desk" {
  high_pass = "150 Hz"
  send "Out" {
    into = "Rack"
  }
}
amplifier "Rack" { # expect pass: down to 150 Hz
  rated_power      = "240 W"
  lowest_frequency = "50 Hz"
}
amplifier "Spare" {
  rated_power      = "240 W"
  lowest_frequency = "50 Hz"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity         = 20
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
}
line "Store" {
  amplifier = "Spare"
  output    = "100 V"
  loudspeaker "S" {
    quantity         = 20
    tap              = "6 W"
    lowest_frequency = "120 Hz"
  }
}
music "Player" { into = "Desk" }
amplifier "Stage" {
  rated_power      = "100 W"
  lowest_frequency = "20 Hz"
}
line "Stage" {
  amplifier = "Stage"
  output    = "8 ohm"
  loudspeaker "T" {
    impedance        = "8 ohm"
    lowest_frequency = "55 Hz"
  }
}
music "Band" { into = "Stage" }
