# Behind the bar's volume control the device reports a fault every evening. Behind
# two it stands in the office.
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "3 W" }
  attenuator "Counter" {
    loudspeaker "C" { tap = "3 W" }
    line_end "End B" { watches = "20 kHz tone" } # expect fail error: End-of-line device "End B" on line "Bar" stands behind attenuator "Counter": turned down, the attenuator hides the line from it. && remedy (computed) Place "End B" at the end of the cable
  }
  loudspeaker "D" { tap = "3 W" }
}
line "Office" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Floor" {
    loudspeaker "E" { tap = "3 W" }
    attenuator "Room" {
      loudspeaker "F" { tap = "3 W" }
      line_end "End O" { watches = "20 kHz tone" } # expect fail error: stands behind attenuator "Floor"
    }
  }
}
