# Nothing is said about what isolates a telephone, a player or a mixer.
amplifier "Rack" {
  input "Aux 1" { takes = "line" }
  input "Aux 2" {
    takes    = "line"
    isolated = false
  }
  input "Line" { takes = "line" }
}
mixer "Stage" {
  output "Main" { balanced = false }
  send "Main" { # expect open: Whether anything isolates Main of Stage from Line of Rack, 45 m away, cannot be told. && what isolates it of output "Main" of mixer "Stage"
    into  = "Rack"
    input = "Line"
    lead  = "45 m"
  }
}
telephone "Page port" {
  into  = "Rack"
  input = "Aux 1" # expect open: Whether anything isolates Page port from Aux 1 of Rack cannot be told. && what isolates it of telephone "Page port"
}
music "Tourist office" {
  into  = "Rack"
  input = "Aux 2" # expect open: what isolates it of music "Tourist office"
  lead  = "60 m"
}
