line "North" {
  loudspeaker "N" {
    tap = "6 W"

line "South" {
  loudspeaker "S" {
    tap = "6 W"
  }
}
