line "North" {
  monitored = yes
  home_run  = "40 m"
}
mute_link "Fire panel" {
  latching  = on
  monitored = No
}
