# Neither a rating nor a list of taps; and one of which the tap is not stated.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "6 W" } # expect open: missing rated power of loudspeaker "H"
  loudspeaker "I" { rated_power = "6 W" } # expect open: missing tap of loudspeaker "I"
}
