# A little more is far.
amplifier "Rack" {
  input "Aux" {
    takes    = "line"
    isolated = false
  }
}
music "Tourist office" {
  into      = "Rack"
  input     = "Aux"
  connector = "RCA"
  channels  = "mono"
  lead      = "31 m"
  isolation = "none" # expect fail warning: Tourist office is 31 m away
}
