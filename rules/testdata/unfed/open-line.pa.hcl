# Which amplifier feeds the line is not stated, and where the player is plugged in neither.
line "Hall" { # expect open: amplifier that feeds the line
  loudspeaker "H" { tap = "6 W" }
}
music "Player" {} # expect open: unit it is plugged into
