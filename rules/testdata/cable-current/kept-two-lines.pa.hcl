# A 100 V line in thin cable, and loudspeakers in ohms on cable that is thick enough.
amplifier "Rack" { rated_power = "240 W" }
amplifier "Stage" {
  rated_power = "400 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.75 mm2" # expect pass: carries 1.911 A at full output; its conductors may carry 6 A && the line takes 200 W / 100 V = 2 A, and with its cable 1.911 A in the leg to H 1 && BS 7671 Table 4F3A
  home_run  = "20 m"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
    spacing  = "4 m"
  }
}
line "Stage" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 2.5 mm2" # expect pass: its conductors may carry 27 A && IEC 60364-5-52 Table B.52.2
  home_run  = "12 m"
  loudspeaker "L" {
    quantity  = 2
    impedance = "8 ohm"
    spacing   = "1 m"
  }
}
