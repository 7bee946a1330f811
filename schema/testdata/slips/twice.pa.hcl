line "North" {
  home_run = "40 m"
  cable    = "16/2"
  home_run = "45 m"
}
