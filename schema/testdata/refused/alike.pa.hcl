# Loudspeakers that cannot be shared out over equal spaces.
line "Ground" {
  attenuator "Room" {
    quantity = 3
    loudspeaker "G" {
      quantity = 5
      space    = "Classroom"
    }
  }
}
line "Upper" { like = "Ground" }
line "Annex" {
  loudspeaker "A" {
    quantity = 3
    space    = "Classroom"
  }
  loudspeaker "O" { space = "Office" }
}
space "Classroom" { alike = 16 }
space "Office" { alike = 4 }
space "Store" { alike = 4 }
