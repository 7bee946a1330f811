# Inside beside the door an attenuator needs no protection; out there one that is
# made for it stands it, as the microphone at the counter does.
amplifier "Rack" { rated_power = "120 W" }
line "Terrace" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Bar" {
    exposure  = "IP20"
    stands_in = "Bar"
    loudspeaker "T" {
      tap      = "5 W"
      exposure = "IP55"
      space    = "Terrace"
    }
  }
  attenuator "Gate" {
    exposure  = "IP44"
    stands_in = "Terrace"
    loudspeaker "G" {
      tap      = "5 W"
      exposure = "IP66"
      space    = "Terrace"
    }
  }
}
microphone "Counter" {
  into      = "Rack"
  exposure  = "IP54"
  stands_in = "Terrace"
}
space "Terrace" {
  exposure = "IP44" # expect pass: 2 loudspeakers, 1 attenuator and 1
}
space "Bar" { height = "3 m" }
