# A field report: a church asks how to get six cables under one pair of terminals.
# Whether the amplifier may feed six loudspeakers at all depends on what these
# terminals are, and nothing is known of the amplifier: six 8 ohm units in parallel
# are 1.33 ohm, too little for any; six line loudspeakers on small taps are
# nothing. No line voltage is guessed. Names are invented.
amplifier "Unknown" {} # expect load-margin open: missing output, with its voltage or its ohms of line "All"
line "All" { # expect impedance-floor open: missing output, with its voltage or its ohms of line "All" # expect cable-loss open: missing output, with its voltage or its ohms of line "All"
  amplifier = "Unknown"
  loudspeaker "S" { quantity = 6 } # expect line-voltage open: missing output, with its voltage or its ohms of line "All"
}
