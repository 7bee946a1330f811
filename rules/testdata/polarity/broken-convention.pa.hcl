# Nothing says which conductor goes where; one note for the job.
system "Offices" { duty = "music" } # expect fail note: Nothing says how 7 loudspeakers are to be connected && brown to +
line "A" {
  output = "100 V"
  loudspeaker "A" {
    quantity = 6
    tap      = "6 W"
  }
}
line "B" {
  output = "100 V"
  loudspeaker "B" {
    tap = "6 W"
  }
}
