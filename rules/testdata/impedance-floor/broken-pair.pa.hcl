# Two in parallel on an output for 8 ohm or more: in series they are 16 ohm.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "8 ohm" # expect fail error: sees 4 ohm && the loudspeakers of line "Room" are wired in parallel && remedy (proved) Wire the two in series: 16 ohm
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  loudspeaker "B" {
    quantity  = 2
    impedance = "8 ohm"
  }
}
