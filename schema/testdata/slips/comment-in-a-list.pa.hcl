line "A" {
  loudspeaker "S" {
    taps_100V = ["6 W", -- the usual one
      "3 W" -- the other
    ]
    tap = "6 W"
  }
}
