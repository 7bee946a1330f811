# Copperfen distribution center, in US units
#
# Two long 70 V lines of horns along the racking, drawn in feet and gauges.
# Results print in the units the design uses. The South line is like the North
# one except for its amplifier and its home run, and that longer way is what it
# fails by: find it with
#
#     loudlint check examples/warehouse_us.pa.hcl
#
# The place and all figures are invented.

system "Copperfen distribution center" {
  reference             = "CF-31-US"
  revision              = "C"
  duty                  = "announcements"
  wiring_rules          = "US"
  units                 = "US"
  conductor_temperature = "86 F"
  polarity              = "red to terminal 1, everywhere"
}

use { file = "house_catalogue.pa.hcl" }

given {
  bay = 40 # feet of cable from one horn to the next
}

amplifier "North amp" {
  model        = "house/line-480"
  wiring_class = "Class 1"
  high_pass    = "350 Hz" # for the horns
}

amplifier "South amp" {
  model        = "house/line-480"
  wiring_class = "Class 1"
  high_pass    = "350 Hz" # for the horns
}

mixer "Front desk" {
  input "Mic" {
    takes       = "microphone"
    sensitivity = "-60 dBV"
    impedance   = "2 kohm"
    connectors  = ["XLR 3"]
    triggers    = []
  }
  output "Left" { level = "0 dBV" }
  output "Right" { level = "0 dBV" }
  send "Left" {
    into  = "North amp"
    input = "Line in"
    lead  = "7 ft"
  }
  send "Right" {
    into  = "South amp"
    input = "Line in"
    lead  = "7 ft"
  }
}

microphone "Shift office" {
  model     = "house/handheld"
  into      = "Front desk"
  input     = "Mic"
  lead      = "20 ft"
  priority  = 1
  lines     = "all"
  stands_in = "Shift office"
}

line "North" {
  amplifier   = "North amp"
  output      = "70 V"
  cable       = "12/2"
  containment = "conduit" # Class 1 is wired as power is
  home_run    = "130 ft"
  loudspeaker "Dock" {
    model    = "house/horn-15"
    quantity = 6
    tap      = "7 1/2 W"
    spacing  = "45 ft"
    space    = "Dock"
    position = ["23 ft", "0 ft", "20 ft"]  # Dock 1, over the doors: along, across, up
    to       = ["259 ft", "0 ft", "20 ft"] # Dock 6
    aim      = "90 deg"                    # across the dock
    tilt     = "30 deg"
  }
  branch "Tee A" {
    leg = "6 ft 6 in" # Dock 6 to the tee
    loudspeaker "Aisle 1" {
      model    = "house/horn-15"
      quantity = 12
      tap      = "7.5 W"
      leg      = "30 ft"
      spacing  = "${given.bay} ft"
      space    = "Racking"
      position = ["16 ft", "0 ft", "24 ft"]
      to       = ["456 ft", "0 ft", "24 ft"]
      aim      = "90 deg" # across the racks and down
      tilt     = "35 deg"
    }
  }
  branch "Tee B" { # the chain went on from Tee A
    leg = "65 ft"
    loudspeaker "Aisle 2" {
      model    = "house/horn-15"
      quantity = 12
      tap      = "7.5 W"
      leg      = "30 ft"
      spacing  = "${given.bay} ft"
      space    = "Racking"
      position = ["16 ft", "131 ft", "24 ft"]
      to       = ["456 ft", "131 ft", "24 ft"]
      aim      = "270 deg"
      tilt     = "35 deg"
    }
  }
}

line "South" {
  like      = "North" # the same, except:
  amplifier = "South amp"
  home_run  = "427 ft"
}

space "Racking" {
  alike             = 2
  length            = "472 ft"
  width             = "131 ft"
  height            = "29 ft 6 in"
  noise             = "66 dBA"
  listeners         = "standing"
  wanted_over_noise = "10 dB"
  reverberation     = { "125 Hz" = "1.6 s", "500 Hz" = "1 s", "2 kHz" = "0.8 s", "8 kHz" = "0.5 s" } # full racks absorb
}

space "Dock" {
  alike         = 2
  length        = "282 ft"
  width         = "46 ft"
  height        = "29 ft 6 in"
  noise         = "72 dBA"
  listeners     = "standing"
  wanted_level  = "84 dBA"
  reverberation = { "125 Hz" = "1.6 s", "500 Hz" = "1.1 s", "2 kHz" = "0.9 s", "8 kHz" = "0.6 s" }
}

space "Shift office" { height = "8 ft 6 in" }

safety {
  line_terminals  = "covered"
  isolation       = "before work"
  mains_separated = true
  earthed         = true
  work_at_height  = "mobile platform, two people"
  fitted_by       = "licensed electrician"
}
