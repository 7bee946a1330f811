# Invented, for tests of the command: 200 W of loudspeakers on 240 W.
system "Test hall" {
  duty = "announcements and music"
}
amplifier "Rack" {
  rated_power = "240 W"
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 20
    tap      = "10 W"
  }
}
