# Speech only: it has little bass, and the horns still do not like it.
amplifier "Rack" { # expect fail note: Speech reaches 10 loudspeakers && 350 Hz
  rated_power      = "240 W"
  lowest_frequency = "60 Hz"
}
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "Y" {
    quantity         = 10
    tap              = "10 W"
    lowest_frequency = "350 Hz"
  }
}
microphone "Desk" {
  into     = "Rack"
  priority = 1
}
