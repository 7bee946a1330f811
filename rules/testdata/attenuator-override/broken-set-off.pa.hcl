# How far the control can be turned down is not stated, but it is set to off: it
# goes so far.
amplifier "Rack" { rated_power = "60 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    setting  = "off" # expect fail error: Attenuator "Counter" can be turned off and nothing lifts it: Desk is then not heard behind it
    override = "none"
    loudspeaker "B" { tap = "6 W" }
  }
}
microphone "Desk" {
  into     = "Rack"
  priority = 1
}
