# A design without a system block has nowhere to write it; it is said at the first loudspeaker.
line "A" {
  output = "100 V"
  loudspeaker "A" { # expect fail note: how 2 loudspeakers
    quantity = 2
    tap      = "6 W"
  }
}
