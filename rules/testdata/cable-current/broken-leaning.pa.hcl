# With thicker cable the two loudspeakers are below what the output may drive: the
# cable is named and not written.
amplifier "Stage" {
  rated_power = "1000 W"
  output "Left" { lowest_impedance = "2.1 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 1.5 mm2" # expect fail warning: its conductors may carry 19.5 A && remedy (computed) Lay 2 x 2.5 mm2: its conductors may carry 27 A. Look at the ratings first
  home_run  = "2 m"
  loudspeaker "L" { impedance = "4 ohm" }
  loudspeaker "M" {
    impedance = "4 ohm"
    leg       = "0.1 m"
  }
}
