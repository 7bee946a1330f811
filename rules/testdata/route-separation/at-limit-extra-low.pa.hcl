# A 50 V line is still extra-low voltage: data may lie beside it. Cable insulated for
# just the mains voltage is insulated for it.
system "Yard" {
  wiring_rules = "Europe"
  mains        = "230 V"
  duty         = "announcements"
}
amplifier "Rack" { rated_power = "240 W" }
cable_model "own/230" {
  size       = "1.5 mm2"
  cores      = 2
  insulation = "230 V"
}
line "Yard" {
  amplifier   = "Rack"
  output      = "50 V"
  cable       = "own/230"
  shared_with = ["data", "mains"] # expect pass
  loudspeaker "Y" { tap = "10 W" }
}
