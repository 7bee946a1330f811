# The same outputs, one of them left off. The fire microphone opens them, and so
# does the desk by its keys, whatever its input does else; music may be switched
# off.
system "Job" { duty = "emergency" }
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone 1" { volts = "100 V" }
  output "Zone 2" {
    volts   = "100 V"
    setting = "off"
  }
  input "Mic" {
    takes         = "microphone"
    opens_outputs = true
  }
  input "Desk" {
    takes         = "paging desk"
    selects       = "each output"
    opens_outputs = false
  }
  input "Aux" {
    takes         = "line"
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
  lines    = "all" # expect pass: Fire microphone reaches Shop and Store
}
microphone "Desk" {
  into       = "Rack"
  input      = "Desk"
  selects    = 2
  priority   = 2
  lines      = "all"
  selectable = true # expect pass: Desk can page each of Shop
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  lines    = "all" # expect pass: Player reaches Shop and Store
}
