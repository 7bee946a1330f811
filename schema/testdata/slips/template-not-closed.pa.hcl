given { bay = 5 }
line "North" {
  home_run = "${given.bay m"
}
