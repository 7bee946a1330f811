# In US units, at the temperature of a hot roof.
system "Roof" {
  units                 = "US"
  conductor_temperature = "140 F"
}
amplifier "Rack" { rated_power = "800 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "70 V"
  cable     = "18 AWG" # expect fail warning: takes 12 % of the voltage && 2 × 100 ft × 7.389 ohm/1000 ft = 1.478 ohm (18 AWG, solid copper, ASTM B258, 140 °F) && the conductors of "18 AWG" are solid && remedy (proved) Use 16 AWG
  home_run  = "100 ft"
  loudspeaker "Horn" { tap = "460 W" }
}
