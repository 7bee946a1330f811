# Two channels do not know of each other; an output that is stated but not used harms nobody; one line alone is not asked.
amplifier "Rack" { # expect pass: may be used together
  channel "A" { rated_power = "120 W" }
  channel "B" { rated_power = "60 W" }
  output "Line" {
    channel    = "A"
    volts      = "100 V"
    never_with = ["Line 70"]
  }
  output "Line 70" {
    channel = "A"
    volts   = "70 V"
  }
  output "Direct" {
    channel          = "B"
    lowest_impedance = "8 ohm"
  }
}
line "Hall" {
  amplifier = "Rack"
  output    = "Line"
  loudspeaker "H" { tap = "30 W" }
}
line "Stage" {
  amplifier = "Rack"
  output    = "Direct"
  loudspeaker "S" { impedance = "8 ohm" }
}
amplifier "Other" { rated_power = "60 W" }
line "Yard" {
  amplifier = "Other"
  output    = "100 V"
  loudspeaker "Y" { tap = "30 W" }
}
