# The lectern speaks to its own hall alone: turning it down may be what the control
# is for. Worth a note.
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Hall level" {
    lowest   = "off" # expect fail note: Lectern is then not heard behind it.
    override = "none"
    loudspeaker "H" { tap = "6 W" }
  }
}
microphone "Lectern" { into = "Rack" }
