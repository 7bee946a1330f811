# Of a plain line the same cable would have been twice as many ohms, and enough: a ring hides less of the loudspeakers.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect fail error: sees 3.98 && remedy (advice) Use loudspeakers with line transformers
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  cable     = "2 x 2.5 mm2"
  home_run  = "98 m"
  ring_leg  = "98 m"
  loudspeaker "B" { impedance = "3.202 ohm" }
}
