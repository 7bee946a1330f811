# Exactly the floor passes, with cable that is not stated left out.
amplifier "Bar" {
  rated_power = "60 W"
  output "Out" {
    lowest_impedance = "4 ohm" # expect pass: sees 4 ohm && cable that is not fully stated is left out
  }
}
line "Room" {
  amplifier = "Bar"
  output    = "Out"
  wiring    = "parallel"
  loudspeaker "B" {
    quantity  = 2
    impedance = "8 ohm"
  }
}
