# One loudspeaker after that tee.
amplifier "Rack" { rated_power = "120 W" }
line "Ground" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "3 W" }
  branch "Last tee" {
    loudspeaker "L" { tap = "3 W" }
    line_end "Far end" { watches = "20 kHz tone" }
  }
  loudspeaker "H" { tap = "3 W" } # expect fail warning: does not watch what comes after "Last tee", from "H" on of line "Ground".
}
