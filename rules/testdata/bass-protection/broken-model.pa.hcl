# The lowest frequency stands in models; the worst loudspeaker is named, and what is
# not known of the old ones does not hide it.
amplifier_model "house/240" {
  lowest_frequency = "60 Hz"
  channel "Main" { rated_power = "240 W" }
  output "100 V" {
    channel = "Main"
    volts   = "100 V"
  }
}
loudspeaker_model "house/ceiling" { lowest_frequency = "120 Hz" }
loudspeaker_model "house/small" { lowest_frequency = "150 Hz" }
amplifier "Rack" { model = "house/240" } # expect fail warning: Music reaches 12 loudspeakers && "S" of line "Hall" takes 150 Hz && does not say enough
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    model    = "house/ceiling"
    quantity = 11
    tap      = "6 W"
  }
  loudspeaker "S" {
    model = "house/small"
    tap   = "6 W"
  }
  loudspeaker "Old" { tap = "6 W" }
}
music "Player" { into = "Rack" }
