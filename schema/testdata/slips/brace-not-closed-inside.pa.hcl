# The loudspeaker is not closed; the brace below it ends the line, by how far in
# it stands.
line "North" {
  loudspeaker "N" {
    tap = "6 W"
}
line "South" {
  loudspeaker "S" {
    tap = "6 W"
  }
}
