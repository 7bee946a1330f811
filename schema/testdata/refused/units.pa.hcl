# Amplifiers and mixers that contradict themselves.
amplifier_model "made/4x120" {
  channel "Channel" {
    quantity    = 4
    rated_power = "120 W"
  }
  output "Channel" {
    quantity = 4
    channel  = "Channel"
    volts    = "100 V"
  }
  input "In" {
    quantity = 4
    channel  = "Channel"
  }
}
amplifier "Four" {
  model       = "made/4x120"
  rated_power = "480 W"
  output "Channel" { pad = "-6 dB" }
  input "In 2" { trim = "-6 dB" } # is right
}
mixer "Four too" { model = "made/4x120" }
mixer "Desk" {
  rated_power = "100 W"
  output "Hall" { volts = "100 V" }
  send "Main" {
    into     = "Four"
    input    = "In"
    quantity = 5
  }
  send "Loop" { into = "Desk" }
  send "Nowhere" { into = "Five" }
  send "Mute" {}
}
amplifier "Two" {
  channel "Left" { rated_power = "50 W" }
  channel "Right" { rated_power = "50 W" }
  output "Both" { lowest_impedance = "4 ohm" }
  output "Left" { lowest_impedance = "4 ohm" }
  output "Third" {
    channel          = "Middle"
    lowest_impedance = "4 ohm"
  }
  output "Line out" { level = "0 dBV" }
}
line "On a line output" {
  amplifier = "Two"
  output    = "Line out"
}
line "On a mixer" { amplifier = "Desk" }
