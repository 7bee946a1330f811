# No conductor does: split the line or turn taps down.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2" # expect fail error: remedy (advice) No standard conductor does it
  home_run  = "5 km"
  loudspeaker "Horn" { tap = "200 W" }
}
