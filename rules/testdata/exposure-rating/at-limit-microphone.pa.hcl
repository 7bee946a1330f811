# IPX3 is just enough under the open sky.
amplifier "Rack" { rated_power = "120 W" }
microphone "Pilot" {
  into      = "Rack"
  exposure  = "IPX3"
  stands_in = "Quay"
}
space "Quay" { outdoors = true } # expect pass: 1 microphone in "Quay" is at
