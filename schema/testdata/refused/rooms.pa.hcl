# Rooms and loudspeakers that cannot be.
space "Bow" { outline = [["0 m", "0 m"], ["12 m", "8 m"], ["12 m", "0 m"], ["0 m", "8 m"]] }
space "Star" { outline = [["0 m", "2 m"], ["10 m", "2 m"], ["10 m", "6 m"], ["4 m", "6 m"], ["4 m", "0 m"]] }
space "Dead" { reverberation = "0 s" }
space "Octaves" { reverberation = { "125 Hz" = "1 s", "1 kHz" = "0 s" } }
space "Kept" {
  outline       = [["0 m", "0 m"], ["24 m", "0 m"], ["24 m", "8 m"], ["14 m", "8 m"], ["14 m", "14 m"], ["0 m", "14 m"]]
  reverberation = "0.1 s"
}
line "Line" {
  loudspeaker "Blind" { coverage = "0 deg" }
  loudspeaker "Round" {
    coverage          = "360 deg"
    coverage_vertical = "-90 deg"
  }
}
