# In an emergency no part of a message may be left to a dial: an error, and no
# priority needs to be written for it.
system "Depot" { duty = "emergency" }
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
  attenuator "Office" {
    lowest   = "-20 dB" # expect fail error: Attenuator "Office" can turn Alarm down by 20 dB, and nothing lifts it.
    override = "none"
    loudspeaker "O" {
      tap = "6 W"
      leg = "2 m"
    }
  }
}
message "Alarm" {
  into  = "Rack"
  input = "Mic"
}
