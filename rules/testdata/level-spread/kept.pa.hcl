# One model on one tap in two runs; another kind is not compared with it; and one that
# is switched off does not count.
system "Job" {
  duty     = "announcements"
  polarity = "brown to terminal 1, everywhere"
}
amplifier "Rack" { rated_power = "240 W" }
loudspeaker_model "own/ceiling" {
  kind        = "ceiling"
  rated_power = "6 W"
  taps_100V   = ["6 W", "3 W"]
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 2.5 mm2"
  home_run  = "10 m"
  loudspeaker "A" {
    model    = "own/ceiling"
    tap      = "6 W" # expect pass: differ by 0 dB
    quantity = 4
    spacing  = "4 m"
    space    = "Hall"
  }
  loudspeaker "B" {
    model = "own/ceiling"
    tap   = "6 W"
    leg   = "9 m"
    space = "Hall"
  }
  loudspeaker "Off" {
    model = "own/ceiling"
    tap   = "0 W"
    leg   = "9 m"
    space = "Hall"
  }
  loudspeaker "Stage" {
    kind  = "column"
    tap   = "20 W"
    leg   = "9 m"
    space = "Hall"
  }
}
space "Hall" { height = "5 m" }
