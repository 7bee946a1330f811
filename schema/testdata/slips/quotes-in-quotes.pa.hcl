line "North" {
  containment = "the "old" pipe"
  home_run    = "40" m
  cable       = "16/2" "4 x 1.5 mm2"
}
