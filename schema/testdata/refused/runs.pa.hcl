# Runs that meet each other or written names.
line "Hall" {
  loudspeaker "H" {
    quantity = 8
    spacing  = "5 m"
  }
  loudspeaker "H 3" {}
  loudspeaker "h12" {}
  loudspeaker "H" {
    quantity = 4
    first    = 8
  }
  loudspeaker "H" {
    quantity = 4
    first    = 20
  }
  loudspeaker "Door" { spacing = "4 m" }
  loudspeaker "Gate" { first = 4 }
  loudspeaker "Door" {}
  loudspeaker "door" {}
  loudspeaker "Aisle 2" { quantity = 9 }
  loudspeaker "Aisle 2 7" {}
  loudspeaker "Zero" { quantity = 0 }
  loudspeaker "Half" { quantity = 1.5 }
  loudspeaker "Huge" { quantity = 3000000 }
  attenuator "Empty" { rating = "6 W" }
  branch "Tee" { leg = "3 m" }
  attenuator "Room" {
    quantity = 2000000
    loudspeaker "Bed" { quantity = 3 }
  }
}
amplifier "Rack" {
  output "Zone" { first = 2 }
  input "In" { quantity = 2000 }
}
