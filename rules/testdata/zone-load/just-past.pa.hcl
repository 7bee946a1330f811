# One more loudspeaker of half a watt.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone" {
    quantity     = 2
    volts        = "100 V"
    highest_load = "60 W" # expect fail error: 0.5 W too much
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 6
    tap      = "10 W"
  }
  loudspeaker "Lobby" { tap = "0.5 W" }
}
