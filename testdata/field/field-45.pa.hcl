# A report from a house that gets a wall control in one more room: closed, it would
# silence the calls from the kitchen too. Either a relay lifts it, on two conductors
# more all the way to it, or the control has no off position. The terrace was done
# so from the beginning: its relay, its four conductors and what feeds them are
# there. Names and figures are invented.
system "Quince Cottage" {
  reference = "QC-45"
  duty      = "announcements and music"
}
amplifier "House amp" {
  relays = "24 V, 0.5 A"
  channel "Main" { rated_power = "120 W" }
  input "Mic 1" {
    takes      = "microphone"
    triggers   = ["signal"]
    mutes      = ["Mic 2", "Aux"]
    mute_depth = "full"
  }
  input "Mic 2" {
    takes    = "microphone"
    triggers = []
  }
  input "Aux" {
    takes    = "line"
    triggers = []
  }
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    channel  = "Main"
    switched = true
  }
}
line "Workshop" {
  amplifier = "House amp"
  output    = "Zone 1"
  cable     = "2 x 1.5 mm2"
  home_run  = "14 m"
  attenuator "Workshop control" {
    rating    = "36 W"
    lowest    = "off" # expect attenuator-override fail error: Attenuator "Workshop control" can be turned off and nothing lifts it: Kitchen call is then not heard behind it. && remedy (computed) Fit an attenuator with a 24 V relay, and lay two conductors more to it && Choose an attenuator that cannot be turned down by more than 6 dB.
    override  = "none"
    cores     = 2
    terminals = "1 in, 2 out, 3 common"
    loudspeaker "W" {
      quantity = 2
      tap      = "6 W"
      leg      = "5 m"
      spacing  = "4 m"
      space    = "Workshop"
    }
  }
}
line "Terrace" { # expect attenuator-override pass: has the 4 conductors that the override of its attenuators needs, and House amp switches it.
  amplifier     = "House amp"
  output        = "Zone 2"
  cable         = "4 x 1.5 mm2" # expect override-supply pass: The override relay at Terrace control gets 23.99 V of the 24 V
  home_run      = "22 m"
  override_from = "House amp"
  attenuator "Terrace control" { # expect attenuator-override pass: is lifted for announcements by its 24 V relay.
    rating    = "36 W"
    lowest    = "off"
    override  = "24 V relay"
    current   = "20 mA"
    cores     = 4
    terminals = "1 in, 2 out, 3 common, 4 and 5 relay"
    loudspeaker "T" {
      quantity = 2
      tap      = "10 W"
      leg      = "3 m"
      spacing  = "6 m"
      space    = "Terrace"
    }
  }
}
microphone "Kitchen call" {
  into     = "House amp"
  input    = "Mic 1"
  priority = 1
}
music "Player" {
  into     = "House amp"
  input    = "Aux"
  channels = "mono"
  priority = 2
}
space "Workshop" { area = "30 m2" }
space "Terrace" {
  area     = "40 m2"
  outdoors = true
}
