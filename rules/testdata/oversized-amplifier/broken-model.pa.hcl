# The rating stands in a model of this file: that is where it would be changed.
amplifier_model "house/line-480" {
  channel "Main" { rated_power = "480 W" } # expect fail note: 40 times the 12 W
  output "100 V" {
    channel = "Main"
    volts   = "100 V"
  }
}
amplifier "Rack" { model = "house/line-480" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 2
    tap      = "6 W"
  }
}
