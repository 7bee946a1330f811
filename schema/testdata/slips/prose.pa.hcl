School, second floor
line "North" {
  the cable runs along the corridor
<<<<<<< mine
  home_run = "40 m"
=======
  home_run = "45 m"
>>>>>>> theirs
}
