# In the bar both loudspeakers stand behind a control that is set to off, in the
# hall two of twelve; nothing lifts either. In the lounge a relay does. That the
# player is not heard is what the control is for.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Mic" {
    takes    = "microphone"
    triggers = ["signal"]
  }
  input "Aux" { takes = "line" }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    lowest   = "off"
    setting  = "off"
    override = "none"
    loudspeaker "A" {
      quantity = 2
      tap      = "6 W"
    }
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
  attenuator "Niche" {
    setting  = "off"
    override = "none"
    loudspeaker "B" {
      quantity = 2
      tap      = "6 W"
    }
  }
}
line "Lounge" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Door" {
    lowest   = "off"
    setting  = "off"
    override = "24 V relay"
    loudspeaker "C" { tap = "6 W" }
  }
}
microphone "Reception" {
  into  = "Rack"
  input = "Mic"
  lines = "all" # expect pass: Reception reaches Bar, Hall and Lounge # expect fail error: Reception is meant for Bar, and all of its loudspeakers stand behind "Counter", set to off, with nothing that lifts it # expect fail warning: Reception is meant for Hall, and 2 of its 12 loudspeakers stand behind "Niche", set to off, with nothing that lifts it
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  lines    = "all" # expect pass: Player reaches Bar, Hall and Lounge
}
