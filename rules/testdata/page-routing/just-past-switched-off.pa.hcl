# An emergency system: that somebody may switch an output off is an error, where
# the input does not open it.
system "Job" { duty = "emergency" }
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  input "Mic" {
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
microphone "Fire microphone" {
  into     = "Rack"
  input    = "Mic"
  priority = 1
  lines    = "all" # expect fail error: Fire microphone is meant for Shop and Store, and is not heard there while somebody has switched Zone 1 and Zone 2 of Rack off: Mic of Rack does not open them # expect pass: Fire microphone reaches Shop and Store
}
