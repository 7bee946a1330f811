# A small hall, of an invented place.
system "Hall" {
  duty         = "announcements and music"
  wiring_rules = "Europe"
}
given { bay = 5 }
amplifier_model "made/mixer-240" {
  kind = "mixer amplifier"
  channel "Main" { rated_power = "240 W" }
  output "Zone" {
    quantity = 2
    channel  = "Main"
    volts    = "100 V"
  }
  input "Mic 1" {
    takes    = "microphone"
    triggers = ["contact"]
    mutes    = ["Aux"]
  }
  input "Aux" { takes = "line" }
}
amplifier "Rack" {
  model     = "made/mixer-240"
  high_pass = "100 Hz"
}
line "Hall" {
  amplifier = "Rack"
  output    = "Zone 1"
  cable     = "2 x 1.5 mm2"
  home_run  = "40 m"
  attenuator "Level" {
    rating = "60 W"
    loudspeaker "H" {
      quantity = 8
      tap      = "6 W"
      leg      = "6 m"
      spacing  = "${given.bay} m"
      space    = "Hall"
    }
  }
  branch "Tee" {
    leg = "3 m"
    loudspeaker "Y" { tap = "1/2 W" }
  }
}
line "Annex" {
  like   = "Hall"
  output = "Zone 2"
}
microphone "Desk" {
  into  = "Rack"
  input = "Mic 1"
  lines = "all"
}
space "Hall" {
  length = "29 ft 6 in"
  noise  = { "125 Hz" = "60 dB", "1 kHz" = "50 dB" }
}
