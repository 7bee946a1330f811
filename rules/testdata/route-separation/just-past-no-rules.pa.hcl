# Whose rules apply is not said, and by no rules does nothing separate them. One line
# says nothing of its way; the safety block does.
system "Yard" { duty = "announcements" }
amplifier "Rack" { rated_power = "240 W" }
line "Yard" {
  amplifier   = "Rack"
  output      = "100 V"
  shared_with = ["mains"] # expect fail warning: nothing keeps them apart; under US rules that is an error
  separation  = "none"
  loudspeaker "Y" { tap = "10 W" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" { tap = "10 W" }
}
safety { mains_separated = true } # expect pass: stated to be kept apart
