# The branch is thin, and carries little of what the line carries.
amplifier "Stage" {
  rated_power = "600 W"
  output "Left" { lowest_impedance = "4 ohm" }
}
cable_model "own/bell wire" {
  size    = "0.5 mm2"
  cores   = 2
  current = "2 A"
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "12/2" # expect pass: carries 8.921 A at full output; its conductors may carry 20 A
  home_run  = "3 m"
  loudspeaker "L" { impedance = "6 ohm" }
  branch "Foyer" {
    leg   = "4 m"
    cable = "own/bell wire"
    loudspeaker "F" {
      impedance = "60 ohm"
      leg       = "5 m"
    }
  }
}
