line "North" {
  home run = "40 m"
  shared-with = ["mains"]
  ring leg = 5 m
}
mute link "Fire panel" {
  latching = true
}
