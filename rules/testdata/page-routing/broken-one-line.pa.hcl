# A desk that is to page one line alone. On the first amplifier another line hangs
# on the same output; the second has a switched output for each; of the third
# nothing says what it can do.
amplifier "Rack" {
  rated_power = "120 W"
  input "Mic" { takes = "microphone" }
}
amplifier "Zones" {
  rated_power = "120 W"
  routing     = "one programme, lines switched"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
    switched = true
  }
  input "Mic" { takes = "microphone" }
}
amplifier "Unsaid" {
  rated_power = "120 W"
  output "Zone" {
    quantity = 2
    volts    = "100 V"
  }
  input "Mic" { takes = "microphone" }
}
line "Office" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" { tap = "30 W" }
}
line "Store" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "30 W" }
}
line "Bar" {
  amplifier = "Zones"
  output    = "Zone 1"
  loudspeaker "C" { tap = "30 W" }
}
line "Yard" {
  amplifier = "Zones"
  output    = "Zone 2"
  loudspeaker "D" { tap = "30 W" }
}
line "Shop" {
  amplifier = "Unsaid"
  output    = "Zone 1"
  loudspeaker "E" { tap = "30 W" }
}
line "Loft" {
  amplifier = "Unsaid"
  output    = "Zone 2"
  loudspeaker "F" { tap = "30 W" }
}
microphone "Clerk" {
  into       = "Rack"
  input      = "Mic"
  lines      = ["Office"]
  selectable = true # expect fail error: Clerk is to page Office without the others, and nothing on the way parts Store from it. && a switched output for each line && Let it page Store too
}
microphone "Barman" {
  into       = "Zones"
  input      = "Mic"
  lines      = ["Bar"]
  selectable = true # expect pass: Barman has one line to page.
}
microphone "Seller" {
  into       = "Unsaid"
  input      = "Mic"
  lines      = ["Shop"]
  selectable = true # expect open: missing routing of amplifier "Unsaid"
}
