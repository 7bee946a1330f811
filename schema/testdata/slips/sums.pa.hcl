line "North" {
  home_run    = 6 +
  length      = max(1, 2
  ring_leg    = (40) m
  monitored   = !
  containment = ${x}
}
