# A stricter limit for this job.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2" # expect fail warning: takes 4.57 % && at most 4.5 % of the voltage && set by the criteria at && remedy (proved) Use 2 x 2.5 mm2
  home_run  = "150 m"
  loudspeaker "Horn" { tap = "120 W" }
}
criteria {
  limit "cable-loss" { warning_drop = "4.5 %" }
}
