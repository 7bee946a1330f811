# Short leads, a long balanced one from a low impedance, and one that is not asked.
amplifier "Rack" {
  input "Mic 1" {
    takes    = "microphone"
    balanced = true
  }
  input "Mic 2" { takes = "microphone" }
  input "Aux 1" { takes = "line" }
  input "Aux 2" { takes = "line" }
  input "Data" { takes = "paging desk" }
}
microphone "Gate" {
  into      = "Rack"
  input     = "Mic 1"
  balanced  = true
  impedance = "200 ohm"
  lead      = "100 m" # expect pass: The lead of Gate is 100 m long. && 1 / (2π × 200 ohm × 100 pF/m × 100 m) = 79.58 kHz
}
microphone "Lectern" {
  into     = "Rack"
  input    = "Mic 2"
  balanced = false
  lead     = "4 m" # expect pass: The lead of Lectern is 4 m long.
}
music "Player" {
  into      = "Rack"
  input     = "Aux 1"
  connector = "RCA pair"
  channels  = "stereo"
  lead      = "2 m" # expect pass: 2 m
}
music "Tuner" {
  into  = "Rack"
  input = "Aux 2"
}
microphone "Reception" {
  into  = "Rack"
  input = "Data"
  lead  = "60 m"
}
