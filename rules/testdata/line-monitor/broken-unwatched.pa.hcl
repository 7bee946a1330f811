# Two tees without a device, one of them inside a watched one; and a chain that goes
# on behind the device.
amplifier "Rack" { rated_power = "120 W" }
line "Ground" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "G" { tap = "3 W" }
  branch "Yard tee" { # expect fail warning: End-of-line devices "Wing end" and "Far end" do not watch branch "Yard tee", branch "Attic tee" and what comes after "Far end", from "H" on of line "Ground". && Give each branch an end-of-line device of its own
    loudspeaker "Y" { tap = "3 W" }
  }
  branch "Wing tee" {
    loudspeaker "W" { tap = "3 W" }
    branch "Attic tee" {
      loudspeaker "A" { tap = "3 W" }
    }
    line_end "Wing end" { watches = "20 kHz tone" }
  }
  line_end "Far end" { watches = "20 kHz tone" }
  loudspeaker "H" { tap = "3 W" }
  loudspeaker "I" { tap = "3 W" }
}
