# One conductor of the relay and the common exchanged.
system "Inn" { reference = "IN-1" } # expect pass
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    terminals = "1 in, 2 out, 3 common, 4 relay, 5 relay"
    wired     = "1 line, 2 loudspeakers, 4 common, 3 relay, 5 relay" # expect fail error: common on terminal 4 and override on terminal 3 && remedy (proved) Connect it by its map: 1 line, 2 loudspeakers, 3 common, 4 override, 5 override.
    loudspeaker "LCounter" { tap = "6 W" }
  }
}
