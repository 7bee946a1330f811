# A model of the design's own is taken at its word.
loudspeaker_model "house/ceiling-6" {
  kind        = "ceiling"
  rated_power = "6 W"
  taps_100V   = ["6 W", "3 W"]
}
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    model = "house/ceiling-6"
    tap   = "6 W"
  }
}
system "Hall" { duty = "announcements" } # expect pass: No model of the typical catalogue
