# 200 W where 168 W are to be the most.
amplifier "Rack" { rated_power = "240 W" } # expect fail warning: 40 W (16.7 %) is free, and the job wants 30 % && at most 168 W && set by the criteria && Take 32 W off
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
criteria {
  limit "spare-capacity" { wanted = "30 %" }
}
