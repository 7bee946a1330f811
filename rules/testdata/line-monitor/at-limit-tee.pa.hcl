# The device stands in the last branch and nothing comes after its tee: all is on
# its way.
amplifier "Rack" { rated_power = "120 W" }
line "Ground" { # expect pass: watches line "Ground" to its far end.
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "3 W" }
  branch "Last tee" {
    loudspeaker "L" { tap = "3 W" }
    line_end "Far end" { watches = "20 kHz tone" }
  }
}
