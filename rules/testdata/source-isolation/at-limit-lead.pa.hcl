# 30 m is near; the telephone has to be isolated at any length.
amplifier "Rack" {
  input "Aux" {
    takes    = "line"
    isolated = false
  }
  input "Tel" {
    takes    = "telephone"
    isolated = true
  }
}
music "Tourist office" {
  into      = "Rack"
  input     = "Aux"
  connector = "RCA"
  channels  = "mono"
  lead      = "30 m"
  isolation = "none"
}
telephone "Page port" {
  into  = "Rack"
  input = "Tel" # expect pass: is isolated
}
