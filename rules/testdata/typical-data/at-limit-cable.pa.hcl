# A standard size of cable from the typical catalogue is no invented figure.
system "Hall" { duty = "announcements" } # expect pass: No model
amplifier "Rack" { rated_power = "120 W" }
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  cable     = "typical/2 x 1.5 mm2"
  home_run  = "20 m"
  loudspeaker "H" { tap = "6 W" }
}
