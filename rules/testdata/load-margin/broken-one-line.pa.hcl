# The rated power stands in a block on one line: the remedy has to spread it out or replace it in place.
amplifier "Rack" { rated_power = "120 W" } # expect fail error: 30 W too much
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 15
    tap      = "10 W"
  }
}
