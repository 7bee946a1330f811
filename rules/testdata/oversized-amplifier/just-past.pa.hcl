# From 100 W on it is asked: 100 W on 9.9 W.
amplifier "Rack" { rated_power = "100 W" } # expect fail note: 10.1 times the 9.9 W
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" { tap = "6 W" }
  loudspeaker "B" { tap = "3.9 W" }
}
