# A telephone with nothing between, where an isolated input is free and where none
# is; a player and a mixer far away on unbalanced leads.
amplifier "Rack" {
  input "Aux 1" {
    takes    = "line"
    triggers = []
  }
  input "Aux 2" {
    takes    = "line"
    isolated = false
    triggers = []
  }
  input "Tel" {
    takes    = "telephone"
    isolated = true
    triggers = []
  }
}
amplifier "Second" {
  input "Line in" {
    takes    = "line"
    balanced = false
    isolated = false
  }
  input "Aux" {
    takes    = "line"
    triggers = []
  }
}
mixer "Stage" {
  output "Main" {
    balanced = false
    isolated = false
  }
  send "Main" { # expect fail warning: Main of Stage goes 45 m to Line in of Second, and nothing isolates the two. && at most 30 m unbalanced without isolation && Order a line transformer
    into  = "Second"
    input = "Line in"
    lead  = "45 m"
  }
}
telephone "Page port" {
  into      = "Rack"
  input     = "Aux 1"
  isolation = "none" # expect fail warning: Page port is a telephone, and nothing isolates it from Aux 1 of Rack. && Plug Page port into Tel of Rack, which is free and isolated. && Order an isolating transformer
}
telephone "Second port" {
  into      = "Second"
  input     = "Aux"
  isolation = "none" # expect fail warning: Second port is a telephone, and nothing isolates it from Aux of Second.
}
music "Tourist office" {
  into      = "Rack"
  input     = "Aux 2"
  connector = "RCA"
  channels  = "mono"
  lead      = "60 m"
  isolation = "none" # expect fail warning: Tourist office is 60 m away, and nothing isolates it from Aux 2 of Rack.
}
