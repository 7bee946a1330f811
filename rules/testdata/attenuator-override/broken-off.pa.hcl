# A closed control kills paging. The two rooms hang on a cable of two conductors;
# the bar has four already.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
  input "Mic" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux"]
  }
  input "Aux" {
    takes    = "line"
    triggers = []
  }
}
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  attenuator "Office" {
    lowest   = "off" # expect fail error: Attenuator "Office" can be turned off and nothing lifts it: Desk is then not heard behind it. && at most 6 dB down && remedy (computed) Fit an attenuator with a 24 V relay, and lay two conductors more to it, as a cable of its own (2 x 1.5 mm2) or by a cable with 4. && Choose an attenuator that cannot be turned down by more than 6 dB.
    override = "none"
    cores    = 2
    loudspeaker "O" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "4 x 1.5 mm2"
  home_run  = "20 m"
  attenuator "Counter" {
    quantity = 2
    spacing  = "4 m"
    lowest   = "off" # expect fail error: Each of the 2 attenuators "Counter" can be turned off && Fit an attenuator with a 24 V relay; the cable has the conductors it needs.
    override = "none"
    loudspeaker "B" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic"
  priority = 1
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  priority = 2
}
