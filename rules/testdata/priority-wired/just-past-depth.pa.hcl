# Music is turned down by less than the 10 dB that are asked for.
amplifier "Rack" {
  rated_power = "240 W"
  input "Mic" {
    takes      = "microphone"
    triggers   = ["signal"]
    mutes      = ["Aux"]
    mute_depth = "9.9 dB"
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
microphone "Desk" {
  into  = "Rack"
  input = "Mic" # expect fail warning: Desk turns Player down by 9.9 dB only && at least 10 dB && common practice
}
music "Player" {
  into     = "Rack"
  input    = "Aux"
  channels = "mono"
}
