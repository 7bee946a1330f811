# Nothing is said of what lifts the first, or how far the second goes down; nobody
# knows how many conductors the cable of the bar has, nor what switches there; the
# desk of the annexe is plugged in nowhere yet.
amplifier "Rack" {
  rated_power = "120 W"
  relays      = "24 V, 1 A"
  input "Mic" {
    takes    = "microphone"
    triggers = ["signal"]
    mutes    = ["Aux"]
  }
  input "Aux" {
    takes    = "line"
    triggers = []
  }
}
line "Rooms" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "2 x 1.5 mm2"
  home_run  = "20 m"
  attenuator "Office" { # expect open: missing what lifts the attenuator for announcements of attenuator "Office"
    lowest = "off"
    loudspeaker "O" {
      tap = "6 W"
      leg = "2 m"
    }
  }
  attenuator "Store" { # expect open: missing how far the attenuator can be turned down of attenuator "Store"
    leg      = "2 m"
    override = "none"
    loudspeaker "S" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
line "Bar" { # expect open: missing number of conductors of the cable of line "Bar": cable = "4 x 1.5 mm2" # expect open: missing unit that switches the override of line "Bar": override_from = "Rack"
  amplifier = "Rack"
  output    = "100 V"
  cable     = "1.5 mm2"
  home_run  = "20 m"
  attenuator "Counter" { # expect pass: lifted
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "B" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
line "Shop" { # expect open: missing conductors it needs, override included of attenuator "Till": cores = 3
  amplifier     = "Rack"
  output        = "100 V"
  cable         = "3 x 1.5 mm2"
  home_run      = "20 m"
  override_from = "Rack"
  attenuator "Till" { # expect pass: lifted
    override = "24 V relay"
    current  = "20 mA"
    loudspeaker "T" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
microphone "Desk" {
  into     = "Rack"
  input    = "Mic"
  priority = 1
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
  priority = 2
}
