# The microphone of the counter comes in by an input that opens no outputs. The
# store is left switched off, so that it hears nothing; somebody may switch off the
# shop. A priority makes that a warning, without one it is a note.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone 1" {
    volts    = "100 V"
    switched = true
  }
  output "Zone 2" {
    volts    = "100 V"
    switched = true
    setting  = "off"
  }
  input "Mic 1" {
    takes         = "microphone"
    opens_outputs = false
  }
  input "Mic 2" {
    takes         = "microphone"
    opens_outputs = false
  }
}
line "Shop" {
  amplifier = "Rack"
  output    = "Zone 1"
  loudspeaker "A" { tap = "30 W" }
}
line "Store" {
  amplifier = "Rack"
  output    = "Zone 2"
  loudspeaker "B" { tap = "30 W" }
}
microphone "Counter" {
  into     = "Rack"
  input    = "Mic 1"
  priority = 1
  lines    = ["Shop", "Store"] # expect fail warning: Counter is meant for Shop, and is not heard there while somebody has switched Zone 1 of Rack off: Mic 1 of Rack does not open it # expect fail error: Counter is meant for Store, and is not heard there: Zone 2 of Rack is switched off, and Mic 1 of Rack does not open it # expect pass: Counter reaches Shop and Store
}
microphone "Till" {
  into  = "Rack"
  input = "Mic 2"
  lines = "all" # expect fail note: Till is meant for Shop, and is not heard there while somebody has switched Zone 1 of Rack off: Mic 2 of Rack does not open it # expect fail error: Till is meant for Store, and is not heard there: Zone 2 of Rack is switched off, and Mic 2 of Rack does not open it # expect pass: Till reaches Shop and Store
}
