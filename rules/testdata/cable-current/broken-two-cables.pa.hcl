# Home run and branch are both too thin; the job asks for 80 % at most.
amplifier "Stage" {
  rated_power = "1000 W"
  output "Left" { rated_into = "2 ohm" }
}
line "Left" {
  amplifier = "Stage"
  output    = "Left"
  cable     = "2 x 1.5 mm2" # expect fail warning: at most 15.6 A (80 % of 19.5 A) && set by the criteria at && remedy (proved) Lay 2 x 4 mm2
  home_run  = "1 m"
  loudspeaker "L" { impedance = "4 ohm" }
  branch "Foyer" { # the branch carries half of it
    leg   = "1 m"
    cable = "2 x 0.75 mm2" # expect fail error: cable "2 x 0.75 mm2" of branch "Foyer" carries 10.76 A && in the leg to F && at most 9 A (150 % of 6 A) && remedy (proved) Lay 2 x 1 mm2
    loudspeaker "F" {
      impedance = "4 ohm"
      leg       = "1 m"
    }
  }
}
criteria {
  limit "cable-current" {
    warning_share = "80 %"
    error_share   = "150 %"
  }
}
