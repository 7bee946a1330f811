# Whether a page opens an output that is off is on no data sheet; of the second
# source the input is not even known.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  input "Mic 1" { takes = "microphone" }
  input "Mic 2" { takes = "microphone" }
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
  into  = "Rack"
  input = "Mic 1"
  lines = "all" # expect open: Whether Counter is heard on outputs that somebody has switched off cannot be told. && whether an announcement is heard on switched outputs that are off # expect pass: Counter reaches Shop and Store
}
microphone "Till" {
  into  = "Rack"
  lines = "all" # expect open: Whether Till is heard on outputs that somebody has switched off cannot be told. && input it goes to # expect pass: Till reaches Shop and Store
}
