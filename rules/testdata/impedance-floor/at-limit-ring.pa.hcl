# A ring is two ways in parallel: 100 m of 2.5 mm² either way are 0.798 ohm before 3.202 ohm, 4 ohm in all.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect pass: sees 4 ohm && with cable = 4 ohm
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  cable     = "2 x 2.5 mm2"
  home_run  = "100 m"
  ring_leg  = "100 m"
  loudspeaker "B" { impedance = "3.202 ohm" }
}
