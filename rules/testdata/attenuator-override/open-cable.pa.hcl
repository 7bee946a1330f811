# Nothing is said of the cable: it has to have the conductors for a relay, and what
# is asked for says so. What switches the override is asked for once, in the same
# words as by the check of its supply.
amplifier "Rack" {
  rated_power = "60 W"
  relays      = "24 V, 1 A"
  input "Mic" { triggers = ["contact"] }
}
line "Bar" { # expect open: missing cable of line "Bar": cable = "4 x 1.5 mm2" # expect open: missing unit that switches the override of line "Bar": override_from = "Rack"
  amplifier = "Rack"
  output    = "100 V"
  home_run  = "20 m"
  attenuator "Counter" { # expect pass: lifted for announcements by its 24 V relay
    lowest   = "off"
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "B" {
      leg = "2 m"
      tap = "6 W"
    }
  }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic"
  trigger  = "contact"
  priority = 1
}
