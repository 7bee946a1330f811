# Old equipment without a figure.
amplifier "Rack" { rated_power = "240 W" } # expect open: load of the existing equipment
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  existing "Old row" {}
}
criteria {
  limit "spare-capacity" { wanted = "25 %" }
}
