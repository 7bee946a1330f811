# A line that no way leads to, and music meant for a line behind another channel.
amplifier "Rack" {
  channel "A" { rated_power = "60 W" }
  channel "B" { rated_power = "60 W" }
  output "A" {
    channel = "A"
    volts   = "100 V"
  }
  output "B" {
    channel = "B"
    volts   = "100 V"
  }
  input "A" {
    channel = "A"
    takes   = "line"
  }
  input "B" {
    channel = "B"
    takes   = "line"
  }
}
amplifier "Yard amp" { rated_power = "60 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "A"
  loudspeaker "A" { tap = "30 W" }
}
line "Bar" {
  amplifier = "Rack"
  output    = "B"
  loudspeaker "B" { tap = "30 W" }
}
line "Yard" {
  amplifier = "Yard amp"
  output    = "100 V"
  loudspeaker "C" { tap = "30 W" }
}
message "Bell" {
  into  = "Rack"
  input = "A"
  lines = "all" # expect fail error: Bell is meant for Bar and Yard, and no way leads there from A of Rack. && Write the send that leads to the amplifier of Bar
}
music "Player" {
  into     = "Rack"
  input    = "B"
  channels = "mono"
  lines    = ["Bar"] # expect pass: Player reaches Bar.
}
