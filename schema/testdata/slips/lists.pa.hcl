line "North" {
  loudspeaker "N" {
    taps_100V = "6 W", "3 W"
    taps_70V  = ["3 W" "1.5 W", 0.75 W]
    taps_25V  = ["2 W",, "1 W"]
    position  = ["2 m", "0 m"
    to        = ["16 m"; "0 m"]
    impedance_at = {
      "125 Hz" = 8 ohm
      1 kHz    : "9 ohm"
      "2 kHz"  => "9 ohm"
      "4 kHz"
    }
  }
}
