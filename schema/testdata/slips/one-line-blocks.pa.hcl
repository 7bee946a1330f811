amplifier "Rack" { channel "Main" { rated_power = "240 W" } }
line "North" {
  loudspeaker "N" { tap = "6 W", leg = "3 m" }
  loudspeaker "O" { tap = "6 W" leg = "3 m" quantity = 2 }
  loudspeaker "P" { tap = "6 W"
    leg = "3 m"
  }
}
