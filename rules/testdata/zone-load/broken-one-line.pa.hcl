# Nothing to move: the watts to take off are named.
amplifier "Rack" {
  rated_power = "240 W"
  output "Zone" {
    quantity     = 2
    volts        = "100 V"
    highest_load = "60 W" # expect fail error: Output "Zone 2" of amplifier "Rack" may carry 60 W and its loudspeakers take 80 W: 20 W too much && remedy (computed) Take 20 W off this output
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "S" {
    quantity = 8
    tap      = "10 W"
  }
}
