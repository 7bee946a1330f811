# A ring of loudspeakers in series: whether its return conductor comes back along them or by the ring leg is not said.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" { lowest_impedance = "8 ohm" }
}
line "Room" { # expect open: missing cable that can be computed (how the conductors of a ring join loudspeakers in series is not said) of line "Room"
  amplifier = "Bar"
  output    = "Out"
  wiring    = "series"
  cable     = "2 x 2.5 mm2"
  home_run  = "5 m"
  ring_leg  = "5 m"
  loudspeaker "B" {
    quantity  = 4
    spacing   = "2 m"
    impedance = "8 ohm"
  }
}
