given {
  bay = 5
}
line "North" {
  home_run = "${given.bay-1} m"
  length   = given.bay m
  ring_leg = given.bay * 2 m
}
