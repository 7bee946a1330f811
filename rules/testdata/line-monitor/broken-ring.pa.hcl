# The device sees the amplifier both ways round the ring. With a reverse return it does not see the return conductor
# before itself; one at either end do together.
amplifier "Rack" { rated_power = "120 W" }
line "Ring" {
  amplifier = "Rack"
  output    = "100 V"
  ring_leg  = "40 m"
  loudspeaker "G" { tap = "6 W" }
  loudspeaker "H" { tap = "6 W" }
  line_end "Far end" { watches = "20 kHz tone" } # expect fail warning: Line "Ring" is a ring, and end-of-line device "Far end" sees the amplifier both ways round: one break of the cable does not show && remedy (advice) Feed the line from one end
}
line "Loop" {
  amplifier = "Rack"
  output    = "100 V"
  ring_leg  = "40 m"
  return    = "reverse"
  loudspeaker "I" { tap = "6 W" }
  loudspeaker "J" { tap = "6 W" }
  line_end "Loop end" { watches = "20 kHz tone" } # expect fail warning: where that is open before the last loudspeaker, those before the break are lost, and it does not show && remedy (advice) Hang a second device beside the first loudspeaker
}
line "Both" { # expect pass: End-of-line devices "First" and "Last" watch line "Both" to its far end.
  amplifier = "Rack"
  output    = "100 V"
  ring_leg  = "40 m"
  return    = "reverse"
  loudspeaker "K" { tap = "6 W" }
  line_end "First" { watches = "20 kHz tone" }
  loudspeaker "L" { tap = "6 W" }
  line_end "Last" { watches = "20 kHz tone" }
}
