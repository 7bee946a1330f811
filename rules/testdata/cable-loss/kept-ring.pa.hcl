# The same loudspeakers would lose more than 10 % at the end of a plain line. As a ring the last of them is the second from the
# amplifier, and the one in the middle loses most.
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 0.75 mm2" # expect pass: from "Y 3", the worst loudspeaker
  home_run  = "40 m"
  ring_leg  = "40 m"
  loudspeaker "Y" {
    quantity = 5
    spacing  = "40 m"
    tap      = "45 W"
  }
}
