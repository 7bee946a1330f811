given { bay = 5 }
line "Bay ${given.bay}" {
  home_run = "40 m"
}
microphone "Desk" {
  into  = "Rack"
  lines = ["Bay 5"] # nobody can tell whether this is right
}
amplifier "Rack" {}
