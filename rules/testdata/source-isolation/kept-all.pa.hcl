# Isolated at the source, at the input, by a summing transformer; balanced leads
# and short ones; a microphone far away, which has no earth of its own.
amplifier "Rack" {
  input "Tel 1" {
    takes    = "telephone"
    isolated = true
  }
  input "Tel 2" {
    takes    = "telephone"
    isolated = false
  }
  input "Aux 1" { takes = "line" }
  input "Aux 2" {
    takes    = "line"
    balanced = true
  }
  input "Aux 3" { takes = "line" }
  input "Mic" { takes = "microphone" }
  input "Line 1" {
    takes    = "line"
    isolated = true
  }
  input "Line 2" { takes = "line" }
}
mixer "Stage" {
  output "Main" { balanced = false }
  output "Record" { balanced = false }
  send "Main" { # expect pass: Main of Stage goes 45 m to Line 1 of Rack, and is isolated.
    into  = "Rack"
    input = "Line 1"
    lead  = "45 m"
  }
  send "Record" {
    into  = "Rack"
    input = "Line 2"
    lead  = "2 m"
  }
}
telephone "Page port" {
  into  = "Rack"
  input = "Tel 1" # expect pass: Tel 1 of Rack is isolated.
}
telephone "Second port" {
  into      = "Rack"
  input     = "Tel 2" # expect pass: Second port is isolated (transformer).
  isolation = "transformer"
}
music "Tourist office" {
  into      = "Rack"
  input     = "Aux 1" # expect pass: Tourist office is isolated (wireless).
  connector = "RCA"
  channels  = "mono"
  lead      = "60 m"
  isolation = "wireless"
}
music "Balanced" {
  into     = "Rack"
  input    = "Aux 2"
  balanced = true
  lead     = "60 m"
}
music "Tablet" {
  into      = "Rack"
  input     = "Aux 3"
  connector = "3.5 mm jack 3-pole"
  channels  = "stereo"
  summed_by = "transformer"
  lead      = "60 m"
}
microphone "Gate" {
  into  = "Rack"
  input = "Mic"
  lead  = "80 m"
}
