# The control is set to off, and whether something lifts it is not stated.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Mic" { takes = "microphone" }
}
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" {
    setting = "off"
    loudspeaker "A" {
      quantity = 2
      tap      = "6 W"
    }
  }
}
microphone "Reception" {
  into  = "Rack"
  input = "Mic"
  lines = ["Bar"] # expect pass: Reception reaches Bar # expect open: Whether Reception is heard on Bar, behind "Counter" set to off, cannot be told. && what lifts the attenuator for announcements
}
