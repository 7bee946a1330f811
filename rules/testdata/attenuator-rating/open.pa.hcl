# No rating; no tap; old equipment of unknown load; a voltage that is not stated.
amplifier "Rack" { rated_power = "120 W" }
line "Bar" {
  amplifier = "Rack"
  output    = "100 V"
  attenuator "Counter" { # expect open: missing rating of the attenuator of attenuator "Counter": rating = "36 W"
    loudspeaker "B" { tap = "6 W" }
  }
  attenuator "Garden" { # expect open: missing tap of loudspeaker "G"
    rating = "36 W"
    loudspeaker "G" {}
  }
  attenuator "Cellar" { # expect open: missing load of the existing equipment of existing "Old horns"
    rating = "36 W"
    existing "Old horns" {}
  }
}
amplifier "Garden amp" { rated_power = "60 W" }
line "Terrace" {
  amplifier = "Garden amp"
  attenuator "Terrace control" { # expect open: missing output, with its voltage
    rating = "36 W"
    loudspeaker "T" {
      tap     = "6 W"
      tap_for = "100 V"
    }
  }
}
