# A report from a house with a 100 V system: on one wall control the last two
# conductors were exchanged, and its owner asks whether it is damaged now. Nothing
# says which of its terminals is which, so that nobody can tell what the exchange
# did. On the control of the study, of the same make, the lid was opened and the
# terminals written down: there the same exchange is found, and what it does. Names
# and figures are invented.
system "Larch House" { # expect attenuator-terminals open: is not stated for 1 of the 2 attenuators of the design: exchanged, an attenuator steps the line up. && missing terminals of the attenuator of attenuator "Kitchen control" && mind Before the amplifier is connected, measure the impedance
  reference = "LH-07"
  duty      = "announcements and music"
}
amplifier "House amp" { rated_power = "60 W" }
line "House" {
  amplifier = "House amp"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "8 m"
  attenuator "Kitchen control" {
    rating = "12 W"
    wired  = "1 line, 2 common, 3 loudspeakers"
    loudspeaker "Kitchen" {
      tap   = "6 W"
      leg   = "4 m"
      space = "Kitchen"
    }
  }
  attenuator "Study control" {
    leg       = "6 m"
    rating    = "12 W"
    terminals = "1 in, 2 out, 3 common"
    wired     = "1 line, 2 common, 3 loudspeakers" # expect attenuator-terminals fail error: common on terminal 2 and loudspeakers on terminal 3, against its map of terminals; towards fully up it comes near to a short circuit. && load it puts on the line at 3 dB down 35.26 W && Connect it by its map: 1 line, 2 loudspeakers, 3 common.
    loudspeaker "Study" {
      tap   = "6 W"
      leg   = "3 m"
      space = "Study"
    }
  }
  loudspeaker "Hall" {
    tap   = "3 W"
    leg   = "5 m"
    space = "Hall"
  }
}
music "Radio" {
  into     = "House amp"
  channels = "mono"
}
space "Kitchen" { area = "14 m2" }
space "Study" { area = "11 m2" }
space "Hall" { area = "9 m2" }
