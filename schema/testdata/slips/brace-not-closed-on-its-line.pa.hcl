line "North" {
  loudspeaker "N" { tap = "6 W"
  loudspeaker "O" { tap = "6 W" }
  loudspeaker "P" { tap = "6 W"
}
mixer "Desk" {
  send "Main" { Into = "Rack" }
}
amplifier "Rack" {}
