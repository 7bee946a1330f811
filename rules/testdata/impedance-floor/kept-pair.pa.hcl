# Two in parallel on 4 ohm, as many small amplifiers are used; the cable adds a little.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect pass: needs at least 4 ohm and sees 4.179 ohm
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "B" {
    quantity  = 2
    spacing   = "5 m"
    impedance = "8 ohm"
  }
}
