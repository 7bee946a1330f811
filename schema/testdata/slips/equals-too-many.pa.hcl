line = "North" {
  loudspeaker = "N" {
    tap = "6 W"
  }
}
