# A desk for floors on an amplifier that gives the same to all outputs, and one
# whose keys choose before the place where the floors part.
amplifier "Rack" {
  rated_power = "120 W"
  routing     = "one programme, all lines"
  input "Desk" {
    takes   = "paging desk"
    selects = "each output"
  }
}
line "Floor 1" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "A" { tap = "30 W" }
}
line "Floor 2" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "B" { tap = "30 W" }
}
microphone "Reception" {
  into       = "Rack"
  input      = "Desk"
  lines      = "all"
  selectable = true # expect fail error: Reception is to page some lines without the others, and nothing on the way parts Floor 1 and Floor 2. && a switched output for each line && Let it page all of its lines together
}
