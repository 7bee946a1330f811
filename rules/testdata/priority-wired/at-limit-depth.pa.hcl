# Music is turned down by exactly the 10 dB that are asked for.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic" {
    takes      = "microphone"
    triggers   = ["signal"]
    mutes      = ["Aux"]
    mute_depth = "-10 dB"
  }
  input "Aux" { takes = "line" }
}
line "Hall" {
  amplifier = "Rack"
  output    = "100 V"
  loudspeaker "H" {
    quantity = 10
    tap      = "6 W"
  }
}
microphone "Desk" { # expect pass: Desk silences Player. && assumed Desk triggers Mic of Rack with its own signal
  into  = "Rack"
  input = "Mic"
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
