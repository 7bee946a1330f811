# The first slip is none to the parser, the second is.
line North {
  home_run = "40 m"
}
line Floor 2 {
  home_run = "40 m"
}
microphone Head's desk {
  into = "Rack"
}
amplifier Rack {
}
