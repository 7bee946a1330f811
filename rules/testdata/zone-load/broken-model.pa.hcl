# The limit stands in the model: the place to look at is the amplifier that has it.
amplifier_model "house/zone-amp" {
  rated_power = "240 W"
  output "Zone 1" {
    volts        = "100 V"
    highest_load = "60 W"
  }
}
amplifier "Rack" { model = "house/zone-amp" } # expect fail error: 20 W too much
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "S" {
    quantity = 8
    tap      = "10 W"
  }
}
