# 0.625 W is the tap that the data sheet rounds to 0.62 W; 2 % is the same tap.
amplifier "Rack" { rated_power = "240 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { # expect pass: has the 5/8 W tap
    taps_100V = ["1.25 W", "0.62 W"]
    tap       = "5/8 W"
  }
  loudspeaker "I" { # expect pass: has the 10.2 W tap
    taps_100V = ["10 W"]
    tap       = "10.2 W"
  }
}
