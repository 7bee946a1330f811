# By which input it goes in is not said, but nothing else is there.
amplifier "Rack" { # expect pass: Player is the only thing plugged into Rack.
  rated_power = "120 W"
}
music "Player" { into = "Rack" }
