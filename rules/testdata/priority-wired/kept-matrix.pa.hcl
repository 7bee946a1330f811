# A matrix in front of two amplifiers. Desk and message come before the music in
# the matrix, once for all zones; in the amplifiers they arrive together. A
# second amplifier has local music, and the desk's contact is wired there too.
mixer "Matrix" {
  model = "typical/matrix-16-standby"
  send "Zone" {
    quantity = 4
    into     = "Amp A"
    input    = "Channel"
  }
  send "Zone 5" {
    into  = "Bar amp"
    input = "Line in"
  }
}
amplifier "Amp A" { model = "typical/line-amp-4x120" }
amplifier "Bar amp" {
  rated_power = "120 W"
  input "Line in" {
    takes    = "line"
    triggers = []
  }
  input "Aux" { takes = "line" }
  input "Page contact" {
    takes      = "contact"
    mutes      = ["Aux"]
    mute_depth = "full"
  }
}
line "Floor 1" {
  amplifier = "Amp A"
  output    = "Channel 1"
  loudspeaker "F" {
    quantity = 10
    tap      = "6 W"
  }
}
line "Floor 2" {
  like   = "Floor 1"
  output = "Channel 2"
}
line "Bar" {
  amplifier = "Bar amp"
  output    = "100 V"
  loudspeaker "B" {
    quantity = 4
    tap      = "6 W"
  }
}
group "Floors" { lines = ["Floor 1", "Floor 2"] }
microphone "Reception" { # expect pass: Reception silences Floor player and Bar player.
  model    = "typical/desk-rj45-8"
  into     = "Matrix"
  input    = "Desk 1"
  priority = 2
  lines    = "all"
  also {
    into  = "Bar amp"
    input = "Page contact"
  }
}
message "General call" { # expect pass: General call silences Reception and Floor player.
  into     = "Matrix"
  input    = "Urgent"
  trigger  = "contact"
  priority = 1
  lines    = ["Floors"]
}
music "Floor player" {
  into      = "Matrix"
  input     = "Music 1"
  channels  = "stereo"
  summed_by = "output"
  lines     = ["Floors"]
}
music "Bar player" {
  into     = "Bar amp"
  input    = "Aux"
  channels = "mono"
}
