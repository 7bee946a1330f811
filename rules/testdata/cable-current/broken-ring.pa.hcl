# The rack stands beside the first of them: the short way takes nearly all of it, and what a ring leg 200 m long takes
# over helps little.
amplifier "Rack" { rated_power = "900 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.75 mm2" # expect fail warning: its conductors may carry 6 A && A of it by the home run and && A by the ring leg && in the leg to R 1 && remedy (proved) Lay 2 x 1 mm2: its conductors may carry 15 A.
  home_run  = "2 m"
  ring_leg  = "200 m"
  loudspeaker "R" {
    quantity = 9
    tap      = "80 W"
    spacing  = "2 m"
  }
}
