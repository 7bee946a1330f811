# Two lines that are alike: one answer for each model, all pieces counted.
loudspeaker_model "own/ceiling" {
  taps_100V = ["6 W"]
  exposure  = "IP21"
}
loudspeaker_model "own/horn" {
  taps_100V = ["10 W"]
  exposure  = "IP66"
}
amplifier "Rack" { rated_power = "360 W" }
line "North" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" {
    model    = "own/ceiling" # expect fail error: 14 loudspeakers in "Platform" (model "own/ceiling") are IP21; the place needs at least IP54
    quantity = 4
    tap      = "6 W"
    space    = "Platform"
  }
  loudspeaker "B" {
    model    = "own/ceiling"
    quantity = 3
    tap      = "6 W"
    space    = "Platform"
  }
  loudspeaker "C" {
    model = "own/horn"
    tap   = "10 W"
    space = "Platform"
  }
}
line "South" { like = "North" }
space "Platform" {
  exposure = "IP54"
  outdoors = true
}
