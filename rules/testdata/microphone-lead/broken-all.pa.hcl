# Unbalanced by its plug, by the source, by the input, and on a send; and balanced
# leads whose capacitance takes the treble.
amplifier "Rack" {
  input "Mic 1" {
    takes    = "microphone"
    balanced = true
  }
  input "Mic 2" {
    takes    = "microphone"
    balanced = true
  }
  input "Mic 3" {
    takes    = "microphone"
    balanced = false
  }
  input "Mic 4" {
    takes    = "microphone"
    balanced = true
  }
  input "Line" { takes = "line" }
}
mixer "Sub" {
  output "Main" { balanced = false }
  send "Main" {
    into  = "Rack"
    input = "Line"
    lead  = "20 m" # expect fail warning: The lead of Main of Sub is 20 m long and unbalanced
  }
}
microphone "Lectern" {
  into      = "Rack"
  input     = "Mic 1"
  connector = "6.35 mm jack 2-pole"
  lead      = "25 m" # expect fail warning: The lead of Lectern is 25 m long and unbalanced: it picks up hum. && at most 10 m unbalanced
}
microphone "Old desk" {
  into     = "Rack"
  input    = "Mic 2"
  balanced = false
  lead     = "15 m" # expect fail warning: The lead of Old desk is 15 m long and unbalanced
}
microphone "Gate" {
  into     = "Rack"
  input    = "Mic 3"
  balanced = true
  lead     = "80 m" # expect fail warning: The lead of Gate is 80 m long and unbalanced
}
microphone "Far pier" {
  into      = "Rack"
  input     = "Mic 4"
  balanced  = true
  impedance = "600 ohm"
  lead      = "200 m" # expect fail warning: The lead of Far pier is 200 m long: with 600 ohm of source impedance it has taken 3 dB of the treble at 13.26 kHz. && 1 / (2π × 600 ohm × 100 pF/m × 200 m) = 13.26 kHz && Keep it at 132.6 m or below && assumed the lead has 100 pF/m between its conductors
}
